"""Every lesson and sheet as a reader meets it: run from the menu, scrolled from top to end."""

import os
from pathlib import Path

import nbformat
import pytest
from seatwork import opening

HOME = opening.source()
PLACES = [
    path.relative_to(HOME).as_posix()
    for folder in ("notebooks", "exercises")
    for path in sorted((HOME / folder).glob("*.ipynb"))
]
SIZES = {"school": (1280, 720), "desk": (1920, 1080)}
CELLS = ".jp-NotebookPanel:not(.lm-mod-hidden) .jp-Notebook .jp-Cell"
SETTLED = 1_500
"""What the page takes at most to lay itself out after the last cell has run [ms]."""

FAULTS = """(cell) => {
  const faults = [];
  for (const output of cell.querySelectorAll('.jp-OutputArea-output')) {
    const kind = output.dataset.mimeType || '';
    if (/error|stderr/.test(kind)) faults.push('failed: ' + output.textContent.slice(0, 300));
    if (/model not found|error displaying/i.test(output.textContent)) faults.push('no view');
  }
  const parts = '.jp-RenderedHTMLCommon, .seatwork-bench, .seatwork-form';
  for (const part of cell.querySelectorAll(parts))
    if (part.offsetParent && part.scrollWidth > part.clientWidth + 2)
      faults.push(`clipped: ${part.className} ${part.scrollWidth} > ${part.clientWidth}`);
  for (const picture of cell.querySelectorAll('img'))
    if (picture.offsetParent && !(picture.naturalWidth && picture.alt)) faults.push('a picture');
  return faults;
}"""


def told_to_fail(place: str) -> int:
    """Count the cells that fail on purpose, and the end of a sheet that nobody has worked yet."""
    cells = nbformat.read(HOME / place, as_version=4).cells
    tagged = sum("raises-exception" in cell.metadata.get("tags", ()) for cell in cells)
    finishing = sum("sheet.finish()" in cell.source for cell in cells)
    return tagged + finishing


@pytest.mark.long
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("place", PLACES)
def test_a_page_runs_and_shows_itself_whole(place, size, lab, page, watch) -> None:
    """No cell fails but those that should, nothing is cut off, and every picture has its words."""
    width, height = SIZES[size]
    page.set_viewport_size({"width": width, "height": height})
    lab.open(page, place)
    lab.run_all(page)
    page.wait_for_timeout(SETTLED)
    count, faults = page.locator(CELLS).count(), []
    assert count > 3
    for number in range(count):
        cell = page.locator(CELLS).nth(number)
        cell.evaluate("cell => cell.scrollIntoView({ block: 'start' })")
        page.wait_for_timeout(60)
        faults += [f"cell {number}: {fault}" for fault in cell.evaluate(FAULTS)]
        keep(page, f"{Path(place).stem}-{size}-{number:02}")
    failed = [fault for fault in faults if ": failed: " in fault]
    assert len(failed) <= told_to_fail(place), failed
    assert [fault for fault in faults if fault not in failed] == []


def keep(page, name: str) -> None:
    """Keep a picture of the page where one is asked for."""
    folder = os.environ.get("SEATWORK_PICTURES")
    if folder:
        Path(folder).mkdir(parents=True, exist_ok=True)
        page.screenshot(path=str(Path(folder) / f"{name}.png"))
