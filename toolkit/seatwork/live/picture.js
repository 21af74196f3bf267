// One live picture: still layers drawn once, moving elements whose attributes follow the kernel.

const SVG = "http://www.w3.org/2000/svg";
const SETTLED_AFTER = 500; // ms without a move

// Names in a page must differ from picture to picture; every widget loads this file anew.
const newName = () => `seatwork-${Math.random().toString(36).slice(2, 10)}`;

function put(parent, tag, attributes = {}) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  parent.append(element);
  return element;
}

function html(parent, tag, className, text = "") {
  const element = document.createElement(tag);
  if (className) element.className = className;
  element.textContent = text;
  parent.append(element);
  return element;
}

// ---------------------------------------------------------------- moving elements

function outline(words, letters, font) {
  let at = 0;
  let d = "";
  for (const [line, x, y] of words) {
    at = x;
    for (const letter of line) {
      const [shape, advance] = letters.get(font + letter) ?? ["", 0];
      d += `M${at} ${y}${shape}`;
      at += advance;
    }
  }
  return d;
}

const movers = {
  path: (node, looks, change) => {
    for (const [name, value] of Object.entries(change)) node.setAttribute(name, value);
  },
  marks: (node, looks, { at, ...rest }) => {
    if (at) {
      let d = "";
      for (let i = 0; i < at.length; i += 2) d += `M${at[i]} ${at[i + 1]}${looks.stamp}`;
      node.setAttribute("d", d);
    }
    movers.path(node, looks, rest);
  },
  image: (node, looks, change) => movers.path(node, looks, change),
  text: (node, looks, { at, lines, box, ...rest }, letters) => {
    const path = node.lastChild;
    if (at)
      node.setAttribute(
        "transform", `translate(${at[0]} ${at[1]}) rotate(${at[2]}) scale(${looks.scale})`);
    if (lines) path.setAttribute("d", outline(lines, letters, looks.font));
    if (box) ["x", "y", "width", "height"].forEach((n, i) => node.firstChild.setAttribute(n, box[i]));
    if (rest.fill) path.setAttribute("fill", rest.fill);
    if (rest.display) node.setAttribute("display", rest.display);
  },
};

function element(parent, looks, name) {
  const { kind, clip, hatch, stamp, font, scale, ground, edge, smooth, ...plain } = looks;
  let home = parent;
  if (clip) {
    put(put(parent, "clipPath", { id: `${name}-clip` }), "path", { d: clip });
    home = put(parent, "g", { "clip-path": `url(#${name}-clip)` });
  }
  if (kind === "text") {
    const group = put(home, "g", { class: "seatwork-word" });
    if (ground)
      put(group, "rect", { fill: ground, stroke: edge, "stroke-width": looks["edge-width"] });
    put(group, "path");
    return group;
  }
  if (kind === "image")
    return put(home, "image", {
      preserveAspectRatio: "none", "image-rendering": smooth ? "auto" : "pixelated" });
  if (hatch) plain.fill = tile(parent, hatch, name);
  return put(home, "path", plain);
}

function tile(parent, hatch, name) {
  const { side } = hatch;
  const pattern = put(parent, "pattern", {
    id: `${name}-hatch`, width: side, height: side, patternUnits: "userSpaceOnUse" });
  put(pattern, "rect", { width: side, height: side, fill: hatch.ground });
  put(pattern, "path", {
    d: hatch.d, stroke: hatch.color, fill: hatch.color, "stroke-width": hatch.width });
  return `url(#${name}-hatch)`;
}

// ---------------------------------------------------------------- one picture

class Picture {
  constructor(page) {
    const name = newName();
    const [width, height] = [page.width * page.units, page.height * page.units];
    this.looks = page.looks;
    this.letters = new Map();
    this.svg = document.createElementNS(SVG, "svg");
    this.svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
    this.svg.setAttribute("role", "img");
    // never larger than the figure, never so tall that it fills the window
    this.svg.style.maxWidth = `min(${page.width}px, ${(70 * width) / height}vh)`;
    this.layers = [];
    this.nodes = [];
    for (const [moves, n] of page.order) {
      if (moves) this.nodes[n] = element(this.svg, page.looks[n], `${name}-${n}`);
      else this.layers[n] = put(this.svg, "image", { width, height, preserveAspectRatio: "none" });
    }
    this.kept = put(this.svg, "g", { class: "seatwork-kept" });
    this.learn(page.letters);
    page.state.forEach((state, n) => this.change(n, state));
  }

  learn(letters = []) {
    for (const [font, letter, ...shape] of letters) this.letters.set(font + letter, shape);
  }

  change(n, change) {
    const looks = this.looks[n];
    movers[looks.kind](this.nodes[n], looks, change, this.letters);
  }

  follow(message) {
    this.learn(message.letters);
    if (message.move) this.svg.classList.toggle("seatwork-glides", message.glide === true);
    for (const [n, change] of Object.entries(message.move ?? {})) this.change(n, change);
    if (message.kept) this.keep(message.kept);
    if (message.text !== undefined) this.svg.setAttribute("aria-label", message.text);
  }

  keep(outlines) {
    this.kept.replaceChildren();
    for (const name of ["seatwork-casing", "seatwork-dashes"])
      for (const d of outlines) put(this.kept, "path", { d, class: name });
  }

  // Fills images with PNGs; resolves when they can be shown without a blank frame.
  async fill(layers, pixels) {
    const images = layers.map((bytes, n) => [this.layers[n], bytes]);
    const moving = this.nodes.find((node) => node.tagName === "image");
    if (moving && pixels.byteLength) images.push([moving, pixels]);
    await Promise.all(images.map(([node, bytes]) => show(node, bytes)));
  }

  async repaint(pixels) {
    await show(this.nodes.find((node) => node.tagName === "image"), pixels);
  }

  close() {
    for (const node of this.svg.querySelectorAll("image")) URL.revokeObjectURL(node.href.baseVal);
  }
}

async function show(node, bytes) {
  const url = URL.createObjectURL(new Blob([bytes], { type: "image/png" }));
  const probe = new Image();
  probe.src = url;
  await probe.decode().catch(() => {});
  URL.revokeObjectURL(node.href.baseVal);
  node.setAttribute("href", url);
}

// ---------------------------------------------------------------- what is beside it

function table(rows, compared) {
  const table = document.createElement("table");
  if (compared) {
    const heads = html(html(table, "thead"), "tr");
    for (const head of ["", "Now", "Kept", "Change"]) {
      const cell = html(heads, head ? "th" : "td", "", head);
      if (head) cell.scope = "col";
    }
  }
  const body = html(table, "tbody");
  for (const [label, ...cells] of rows) {
    const row = html(body, "tr");
    html(row, "th", "", label).scope = "row";
    for (const cell of cells) html(row, "td", "", cell);
  }
  return table;
}

// Readouts are rewritten in place; a table is built anew only when its shape changes.
function read(home, message) {
  if (!message.rows) return;
  const shape = JSON.stringify([message.compared, message.rows.map((r) => [r[0], r.length])]);
  if (home.dataset.shape !== shape) {
    home.dataset.shape = shape;
    home.replaceChildren(...(message.rows.length ? [table(message.rows, message.compared)] : []));
    return;
  }
  const cells = home.querySelectorAll("tbody td");
  message.rows.flatMap((row) => row.slice(1)).forEach((text, n) => {
    if (cells[n].textContent !== text) cells[n].textContent = text;
  });
}

function pageLooks(root, width) {
  const shown = root.querySelector("svg")?.clientWidth || width;
  const needed = (shown / width) * window.devicePixelRatio;
  return {
    dark: document.body.dataset.jpThemeLight === "false",
    scale: Math.min(4, Math.max(1, Math.ceil(needed * 2) / 2)),
  };
}
