"""The live picture: a still ground drawn once, moving artists as vectors on top of it."""

import io
from itertools import count
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.colors import NoNorm
from matplotlib.image import AxesImage
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from PIL import Image

from seatwork.drawings.scene import Drawing, GhostScene, Scene
from seatwork.live.element import Element
from seatwork.live.layers import layer, stack
from seatwork.live.lettering import Lettering
from seatwork.live.outlines import UNITS_PER_PIXEL
from seatwork.live.shapes import elements_of


class LivePicture:
    """What a page needs to show a scene and to follow it.

    Parameters
    ----------
    scene : Scene
        Drawn here, once.
    scale : float
        Pixels of the still ground per pixel of the figure [1].

    Raises
    ------
    TypeError
        If one of the moving artists is of a kind that the live picture cannot carry.
    """

    def __init__(self, scene: Scene[Any], scale: float = 1.0) -> None:
        self._scene = scene
        self.drawing: Drawing = scene.draw()
        figure = self.drawing.figure
        figure.draw_without_rendering()
        self._letters = Lettering(figure)
        self._runs = stack(figure)
        self._artists = [a for moves, run in self._runs if moves for a in run]
        self._elements = [elements_of(a, figure, self._letters) for a in self._artists]
        self._flat: list[Element] = [e for group in self._elements for e in group]
        self._followed = _followed(self._artists, self._elements)
        self._image = next((a for a in self._artists if isinstance(a, AxesImage)), None)
        self._paths: dict[Artist, Path | None] = {}
        for artist in self._artists:
            artist.stale = True
        self._read()
        self.pixels = self._pixels()
        self.layers = self.still(scale)

    def still(self, scale: float) -> list[bytes]:
        """Draw the still layers as PNGs, bottom first, at a `scale` [pixels per figure pixel]."""
        still = [run for moves, run in self._runs if not moves]
        return [
            layer(self.drawing.figure, run, ground=number == 0, scale=scale)
            for number, run in enumerate(still)
        ]

    def page(self) -> dict[str, Any]:
        """Return everything a page needs to build the picture as it is now."""
        box = self.drawing.figure.bbox
        return {
            "width": round(box.width),
            "height": round(box.height),
            "units": UNITS_PER_PIXEL,
            "order": self._order(),
            "looks": [element.looks for element in self._flat],
            "state": [element.state for element in self._flat],
            "letters": self._letters.known(),
        }

    def move(self, part: Any) -> tuple[str, dict[str, Any]]:
        """Move the scene to another part.

        Returns
        -------
        text : str
            What the picture shows now.
        changes : dict
            By element what changed, and letter shapes the page has not had.
        """
        text = self._scene.move(part)
        changes: dict[str, Any] = {"move": self._read()}
        letters = self._letters.fresh()
        if letters:
            changes["letters"] = letters
        if self._image is not None and self._image.stale:
            self.pixels = self._pixels()
            changes["pixels"] = True
        return text, changes

    @property
    def fonts(self) -> list[str]:
        """The names of the fonts of the moving words, by their numbers."""
        return self._letters.fonts

    def told(self) -> list[list[list[Any]]] | None:
        """Return what a reader without matplotlib must know, artist by artist as they were made.

        Returns
        -------
        list or None
            For each artist that moves its elements: number and facts. None where one of them
            cannot be read without matplotlib.
        """
        numbered = {id(artist): group for artist, group, _ in self._followed}
        made = [
            artist
            for axes in self.drawing.figure.axes
            for artist in axes.get_children()
            if artist.get_animated()
        ]
        found = [numbered[id(artist)] for artist in made]
        if any(element.facts is None for group in found for _, element in group):
            return None
        return [[[int(n), element.facts] for n, element in group] for group in found]

    def ghost(self) -> list[str]:
        """Return the outlines that may stay behind, as they are now."""
        if not isinstance(self._scene, GhostScene):
            return []
        kept = {id(artist) for artist in self._scene.ghosts}
        return [
            element.state["d"]
            for artist, group in zip(self._artists, self._elements, strict=True)
            for element in group
            if id(artist) in kept and artist.get_visible() and element.state.get("d")
        ]

    def _read(self) -> dict[str, Any]:
        """Return the changes of every element that changed, by number.

        An artist that nothing was set on since the last reading is not stale, and passed over.
        A new path makes no patch stale, so it is known by being another object.
        """
        found: dict[str, Any] = {}
        for artist, group, has_path in self._followed:
            path = artist.get_path() if has_path else None
            if artist.stale or path is not self._paths.get(artist):
                self._paths[artist] = path
                found |= {n: changes for n, element in group if (changes := element.changes())}
                artist.stale = artist is self._image
        return found

    def _order(self) -> list[list[int]]:
        """Return layers and elements bottom first: [0, layer] or [1, element]."""
        order: list[list[int]] = []
        groups = iter(self._elements)
        stills = elements = 0
        for moves, run in self._runs:
            if not moves:
                order.append([0, stills])
                stills += 1
                continue
            many = sum(len(next(groups)) for _ in run)
            order += [[1, elements + n] for n in range(many)]
            elements += many
        return order

    def _pixels(self) -> bytes:
        """Return the moving image as a PNG, its first row on top; empty without one."""
        if self._image is None:
            return b""
        image = _of_tones(self._image) or _of_colors(self._image)
        out = io.BytesIO()
        image.save(out, "png", compress_level=1)
        self._image.stale = False
        return out.getvalue()


def _of_tones(artist: AxesImage) -> Image.Image | None:
    """Return an image of numbered tones with its palette; None if it has none."""
    tones = artist.get_array()
    if not isinstance(artist.norm, NoNorm) or tones is None or tones.dtype != np.uint8:
        return None
    found = Image.fromarray(_upright(artist, np.asarray(tones)))
    found.putpalette(artist.cmap(np.arange(artist.cmap.N), bytes=True)[:, :3].tobytes())
    return found


def _of_colors(artist: AxesImage) -> Image.Image:
    """Return any image in its colors and opacities."""
    rgba = artist.to_rgba(np.ma.asarray(artist.get_array()), bytes=True)
    return Image.fromarray(_upright(artist, rgba))


def _upright(artist: AxesImage, rows: np.ndarray) -> np.ndarray:
    """Return rows of an image, the top one first."""
    return rows if artist.origin == "upper" else np.ascontiguousarray(rows[::-1])


def _followed(
    artists: list[Artist], elements: list[list[Element]]
) -> list[tuple[Any, list[tuple[str, Element]], bool]]:
    """Give each artist with its elements, numbered through all, and whether it has a path."""
    number = count()
    return [
        (artist, [(str(next(number)), element) for element in group], isinstance(artist, PathPatch))
        for artist, group in zip(artists, elements, strict=True)
    ]


def moving(drawing: Drawing) -> list[Artist]:
    """Return the artists of a drawing that are marked as moving."""
    return [artist for moves, run in stack(drawing.figure) if moves for artist in run]
