// Two boxes that are closed until asked for: where the numbers come from, and cautions. Above them
// a line that says when the shop's files are newer than the bench.

function html(parent, tag, text = "") {
  const element = document.createElement(tag);
  element.textContent = text;
  parent.append(element);
  return element;
}

function box(root, title) {
  const details = html(root, "details");
  html(details, "summary", title);
  return html(details, "div");
}

function list(home, lines) {
  const items = html(home, "ul");
  for (const line of lines) html(items, "li", line);
}

function render({ model, el }) {
  const root = html(el, "div");
  root.className = "seatwork-notes";
  const newer = html(root, "p");
  newer.setAttribute("role", "status");
  const { sources, cautions } = model.get("titles");
  const from = model.get("sources").length ? box(root, sources) : null;
  const before = model.get("cautions").length ? box(root, cautions) : null;
  for (const { title, hazard, doing, number } of model.get("cautions")) {
    html(before, "h3", title);
    html(before, "p", hazard);
    list(before, doing);
    if (number) html(before, "p", number);
  }
  if (before) html(before, "p", model.get("closing"));

  function say() {
    newer.textContent = model.get("outdated");
    newer.hidden = !newer.textContent;
  }

  function show() {
    from?.replaceChildren();
    if (from) list(from, model.get("sources"));
  }

  model.on("change:sources", show);
  model.on("change:outdated", say);
  show();
  say();
  return () => {
    model.off("change:sources", show);
    model.off("change:outdated", say);
  };
}

export default { render };
