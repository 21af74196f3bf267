// Blocks of a heading and a table; every word is set as text, never as markup.

function html(parent, tag, text = "") {
  const element = document.createElement(tag);
  element.textContent = text;
  parent.append(element);
  return element;
}

function table(home, { heads, rows }) {
  const made = html(html(home, "div"), "table");
  made.parentElement.className = "seatwork-wide";
  if (heads.length) {
    const line = html(html(made, "thead"), "tr");
    for (const head of heads) html(line, "th", head).scope = "col";
  }
  const body = html(made, "tbody");
  for (const [first, ...rest] of rows) {
    const line = html(body, "tr");
    html(line, "th", first).scope = "row";
    for (const cell of rest) html(line, "td", cell);
  }
}

function block(root, said) {
  const home = said.folded ? html(root, "details") : html(root, "section");
  if (said.kind) home.className = `seatwork-${said.kind}`;
  if (said.heading) html(home, said.folded ? "summary" : "h3", said.heading);
  if (said.rows.length) table(home, said);
}

function render({ model, el }) {
  const root = html(el, "div");
  root.className = "seatwork-tables";
  if (model.get("told")) root.setAttribute("role", "status");

  function show() {
    const open = [...root.querySelectorAll("details")].map((one) => one.open);
    root.replaceChildren();
    for (const said of model.get("blocks")) block(root, said);
    root.querySelectorAll("details").forEach((one, at) => (one.open = Boolean(open[at])));
  }

  model.on("change:blocks", show);
  show();
  return () => model.off("change:blocks", show);
}

export default { render };
