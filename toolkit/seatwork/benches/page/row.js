// One control row: range, minus, plus and a box that takes shop text. Only native inputs.

const LEAST_LETTERS = 8; // of a box

// Names in a page must differ from row to row; every widget loads this file anew.
const newName = () => `seatwork-row-${Math.random().toString(36).slice(2, 10)}`;

function html(parent, tag, attributes = {}, text = "") {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = text;
  parent.append(element);
  return element;
}

// One question under way at a time; of those waiting only the latest; the last is always asked.
function asker(model, name) {
  let asked = 0;
  let answered = 0;
  let waiting = null;
  function ask() {
    if (waiting === null || asked !== answered) return;
    asked += 1;
    model.send({ ...waiting, asked: `${name}:${asked}` });
    waiting = null;
  }
  return {
    want(question) {
      waiting = question;
      ask();
    },
    hear(answer) {
      if (answer !== `${name}:${asked}`) return;
      answered = asked;
      ask();
    },
    get busy() {
      return waiting !== null || asked !== answered;
    },
  };
}

function build(el, name) {
  const root = html(el, "div", { class: "seatwork-row" });
  const label = html(root, "label", { for: `${name}-range` });
  const line = html(root, "div", { class: "seatwork-line" });
  const less = html(line, "button", { type: "button" }, "−");
  const range = html(line, "input", { type: "range", id: `${name}-range`, step: 1 });
  const more = html(line, "button", { type: "button" }, "+");
  const box = html(line, "input", {
    type: "text", autocomplete: "off", spellcheck: "false", "aria-describedby": `${name}-trouble` });
  const trouble = html(root, "p", {
    class: "seatwork-trouble", id: `${name}-trouble`, role: "status" });
  return { root, label, less, range, more, box, trouble };
}

function render({ model, el }) {
  const name = newName();
  const parts = build(el, name);
  const { label, less, range, more, box, trouble } = parts;
  const line = asker(model, name);
  let now = model.get("now");

  function lay() {
    const spec = model.get("spec");
    label.textContent = spec.label;
    range.min = spec.low;
    range.max = spec.high;
    less.setAttribute("aria-label", `${spec.label}: smaller`);
    more.setAttribute("aria-label", `${spec.label}: larger`);
    box.setAttribute("aria-label", `${spec.label}: type a value`);
    show(model.get("now"));
  }

  function show(told) {
    now = told;
    line.hear(now.asked);
    if (line.busy) return;
    range.value = now.step;
    range.setAttribute("aria-valuetext", now.value);
    trouble.textContent = now.trouble;
    box.setAttribute("aria-invalid", String(Boolean(now.trouble)));
    if (!now.trouble) box.value = now.text; // a text with a fault stays, to be mended
    fit();
  }

  function fit() {
    box.size = Math.max(LEAST_LETTERS, box.value.length + 1);
    box.toggleAttribute("data-changed", box.value !== now.text); // Esc puts it back
  }

  function go(by) {
    const step = Math.min(range.max, Math.max(range.min, Number(range.value) + by));
    range.value = step;
    line.want({ step });
  }

  function typed() {
    if (box.value !== now.text) line.want({ typed: box.value });
  }

  range.addEventListener("input", () => line.want({ step: Number(range.value) }));
  range.addEventListener("keydown", (event) => {
    const page = { PageUp: 1, PageDown: -1 }[event.key];
    if (!page) return;
    event.preventDefault();
    go(page * model.get("spec").page);
  });
  less.addEventListener("click", () => go(-1));
  more.addEventListener("click", () => go(1));
  box.addEventListener("input", fit);
  box.addEventListener("change", typed);
  box.addEventListener("keydown", (event) => {
    if (event.key === "Enter") typed();
    if (event.key === "Escape") {
      box.value = now.text;
      fit();
    }
  });

  const renew = () => show(model.get("now"));
  const told = ({ detail }) => detail.name === model.get("spec").name && show(detail.now);
  model.on("change:spec", lay);
  model.on("change:now", renew);
  lay();
  // The bench around the row is there once the row has been put into the page.
  let bench = null;
  const placed = new ResizeObserver(() => {
    bench ??= parts.root.closest(".seatwork-bench");
    bench?.addEventListener("seatwork-tell", told);
  });
  placed.observe(parts.root);
  return () => {
    model.off("change:spec", lay);
    model.off("change:now", renew);
    placed.disconnect();
    bench?.removeEventListener("seatwork-tell", told);
  };
}

export default { render };
