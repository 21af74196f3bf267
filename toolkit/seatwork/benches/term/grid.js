// The class as a table of buttons: one stop for Tab, arrow keys within; every word set as text.

function html(parent, tag, attributes = {}, text = "") {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = text;
  parent.append(element);
  return element;
}

function cell(line, said, place) {
  const home = html(line, place.column ? "td" : "th", place.column ? {} : { scope: "row" });
  if (!said.label) {
    home.textContent = said.text;
    return;
  }
  html(home, "button", {
    type: "button", tabindex: "-1", "aria-label": said.label, "aria-pressed": "false",
    "data-row": place.row, "data-column": place.column,
  }, said.text);
}

function build(el, { caption, heads, rows }) {
  const name = `seatwork-class-${Math.random().toString(36).slice(2, 10)}`;
  html(el, "p", { id: name }, caption);
  const table = html(el, "table", { "aria-describedby": name });
  const top = html(html(table, "thead"), "tr");
  for (const head of heads) html(top, "th", { scope: "col" }, head);
  const body = html(table, "tbody");
  rows.forEach((cells, row) => {
    const line = html(body, "tr");
    cells.forEach((said, column) => cell(line, said, { row, column }));
  });
  return table;
}

// Where an arrow key leads: the next button that way, staying where there is none.
function next(buttons, now, key) {
  const [row, column] = [Number(now.dataset.row), Number(now.dataset.column)];
  const along = (found, by) => found.reduce((best, one) => (!best || by(one) < by(best) ? one : best), null);
  const at = (name) => (one) => Number(one.dataset[name]);
  const same = { ArrowLeft: "row", ArrowRight: "row", Home: "row", End: "row" }[key];
  const line = buttons.filter((one) => (same ? at("row")(one) === row : at("column")(one) === column));
  const of = same ? at("column") : at("row");
  const here = same ? column : row;
  if (key === "Home") return along(line, of);
  if (key === "End") return along(line, (one) => -of(one));
  const ahead = key === "ArrowRight" || key === "ArrowDown";
  const beyond = line.filter((one) => (ahead ? of(one) > here : of(one) < here));
  return along(beyond, (one) => (ahead ? of(one) : -of(one)));
}

const KEYS = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", "Home", "End"];

function render({ model, el }) {
  const root = html(el, "div", { class: "seatwork-class" });
  let buttons = [];

  function mark() {
    const [row, column] = model.get("chosen");
    for (const one of buttons) {
      const is = one.dataset.row === String(row) && one.dataset.column === String(column);
      one.setAttribute("aria-pressed", String(is));
    }
  }

  function stop(at, focus) {
    for (const one of buttons) one.tabIndex = one === at ? 0 : -1;
    if (focus) at.focus();
  }

  function show() {
    const had = root.contains(document.activeElement) ? document.activeElement.dataset : null;
    root.replaceChildren();
    build(root, model.get("grid"));
    buttons = [...root.querySelectorAll("button")];
    const same = had && buttons.find(
      (one) => one.dataset.row === had.row && one.dataset.column === had.column);
    if (buttons.length) stop(same || buttons[0], Boolean(same));
    mark();
  }

  root.addEventListener("click", ({ target }) => {
    const found = target.closest("button");
    if (!found) return;
    stop(found, true);
    model.send({ row: Number(found.dataset.row), column: Number(found.dataset.column) });
  });
  root.addEventListener("keydown", (event) => {
    const found = event.target.closest("button");
    if (!found || !KEYS.includes(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
    const to = next(buttons, found, event.key);
    if (to) stop(to, true);
  });
  const home = (place) => Boolean(place.closest(".seatwork-term")?.contains(root));
  const unguard = guardKeys(home);
  model.on("change:grid", show);
  model.on("change:chosen", mark);
  show();
  return () => {
    unguard();
    model.off("change:grid", show);
    model.off("change:chosen", mark);
  };
}

export default { render };
