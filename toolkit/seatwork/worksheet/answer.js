// The form under a question. What is told or typed becomes text, never markup.

const REST = 1000; // of typing, before "saved" is shown [ms]
const LEAST_LETTERS = 12; // of a box

// Names in a page must differ from form to form; every widget loads this file anew.
const newName = () => `seatwork-form-${Math.random().toString(36).slice(2, 10)}`;

function html(parent, tag, attributes = {}, text = "") {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = text;
  parent.append(element);
  return element;
}

const png = (bytes) => URL.createObjectURL(new Blob([bytes], { type: "image/png" }));

// ---------------------------------------------------------------- boxes

class Box {
  constructor(home, part, name, text) {
    this.row = html(home, "div", { class: "seatwork-part" });
    const label = html(this.row, "label", { for: name }, part.label);
    html(label, "span", { class: "seatwork-hidden" }, part.unit_words);
    this.input = html(this.row, "input", {
      id: name, type: "text", spellcheck: "false", autocomplete: "off", autocapitalize: "off" });
    this.input.size = LEAST_LETTERS;
    html(this.row, "span", { "aria-hidden": "true" }, part.unit);
    this.text = text;
  }
  get text() { return this.input.value; }
  set text(text) { this.input.value = text; }
  get inputs() { return [this.input]; }
  focus(select) {
    this.input.focus();
    if (select) this.input.select();
  }
}

class Choice {
  constructor(home, part, name, text) {
    this.row = html(home, "fieldset", { class: "seatwork-part" });
    html(this.row, "legend", {}, part.legend);
    this.inputs = part.options.map(([word, shown], number) => {
      const label = html(this.row, "label", { class: "seatwork-option" });
      const input = html(label, "input", {
        id: `${name}-${number}`, type: "radio", name, value: word });
      html(label, "span", {}, shown);
      return input;
    });
    this.text = text;
  }
  get text() { return this.inputs.find((input) => input.checked)?.value ?? ""; }
  set text(text) { for (const input of this.inputs) input.checked = input.value === text; }
  focus() { (this.inputs.find((input) => input.checked) ?? this.inputs[0]).focus(); }
}

// ---------------------------------------------------------------- the form

function render({ model, el }) {
  const name = newName();
  const root = html(el, "form", { class: "seatwork-form", novalidate: "" });
  let boxes = [];
  let parts = {};
  let turn = 0;
  let rest = 0;
  let addresses = [];
  let painted = null;
  let figured = "";

  const texts = () => boxes.map((box) => box.text);

  function build() {
    const asked = model.get("asked");
    root.replaceChildren();
    root.setAttribute("aria-labelledby", `${name}-heading`);
    root.lang = asked.language;
    parts = {};
    const skip = html(root, "button", { type: "button", class: "seatwork-skip" }, asked.skip);
    parts.figure = html(root, "figure", { class: "seatwork-asked" });
    parts.picture = html(parts.figure, "img", { alt: asked.alt, lang: "en" });
    parts.figure.hidden = !asked.alt;
    parts.picture.addEventListener("load", look);
    const work = html(root, "div", { class: "seatwork-work" });
    parts.languages = html(work, "div", { class: "seatwork-languages" });
    for (const [code, own] of asked.languages) language(code, own, code === asked.language);
    parts.question = html(work, "div", { class: "seatwork-question", tabindex: "-1" });
    skip.addEventListener("click", () => parts.question.focus());
    parts.heading = html(parts.question, "strong", { id: `${name}-heading` }, asked.heading);
    html(parts.question, "span", { class: "seatwork-mode" }, asked.mode);
    for (const line of asked.lines) html(parts.question, "p", {}, line);
    parts.fields = html(work, "div", { class: "seatwork-fields" });
    boxes = asked.parts.map(field);
    if (asked.sure) sure(work, asked);
    parts.buttons = html(work, "div", { class: "seatwork-buttons" });
    parts.saved = html(work, "span", { class: "seatwork-saved" });
    parts.verdict = html(work, "div", {
      class: "seatwork-verdict", role: "status", id: `${name}-verdict` });
    parts.choices = html(work, "div", { class: "seatwork-buttons" });
    parts.help = html(work, "div", { class: "seatwork-help" });
    parts.figures = html(root, "div", { class: "seatwork-figures" });
    painted = null;
    figured = "";
  }

  function field(part, number) {
    const home = html(parts.fields, "div", { class: "seatwork-field" });
    if (part.prompt) html(home, "p", { class: "seatwork-prompt" }, part.prompt);
    const typed = model.get("now").texts[number] ?? "";
    const kind = part.options.length ? Choice : Box;
    const box = new kind(home, part, `${name}-${number}`, typed);
    box.said = html(home, "p", { class: "seatwork-said", id: `${name}-said-${number}` });
    for (const input of box.inputs) {
      input.addEventListener("input", type);
      input.addEventListener("keydown", (event) => key(event, box, number));
    }
    return box;
  }

  function sure(work, asked) {
    const label = html(work, "label", { class: "seatwork-option" });
    const mark = html(label, "input", { type: "checkbox" });
    mark.checked = model.get("now").sure;
    html(label, "span", {}, asked.sure);
    mark.addEventListener("change", () => model.send({ sure: mark.checked }));
  }

  function language(code, own, chosen) {
    const made = html(parts.languages, "button", {
      type: "button", lang: code, "aria-pressed": String(chosen) }, own);
    made.addEventListener("click", () => press(`speak ${code}`));
  }

  // ------------------------------------------------------------ hands

  function type() {
    parts.saved.textContent = "";
    for (const box of boxes) unmark(box);
    clearTimeout(rest);
    rest = setTimeout(rested, REST);
    model.set("typed", texts());
    model.save_changes();
  }

  function key(event, box, number) {
    const plain = !(event.ctrlKey || event.metaKey || event.altKey);
    if (event.key === "Enter" && plain && !event.isComposing) {
      event.preventDefault();
      event.stopPropagation();
      press("check");
    } else if (event.key === "Escape" && plain) {
      event.preventDefault();
      event.stopPropagation();
      box.text = checked(number);
      type();
    }
  }

  const checked = (number) => model.get("now").judged[number] ?? "";

  // Esc puts back what was checked; where nothing is to be put back, it leads out.
  function keeps(place) {
    const number = boxes.findIndex((box) => box.inputs.includes(place));
    return number >= 0 && boxes[number].text !== checked(number);
  }

  function press(what) {
    if (what === "next") return onward();
    if (model.get("now").closed && what === "check") return;
    model.send({ press: what, texts: texts() });
  }

  function onward() {
    const next = following();
    if (!next) return;
    next.scrollIntoView({ block: "nearest" });
    next.querySelector("input")?.focus();
  }

  function following() {
    const forms = [...document.querySelectorAll(".seatwork-form")].filter((f) => f.isConnected);
    return forms[forms.indexOf(root) + 1];
  }

  // ------------------------------------------------------------ what is told

  function lay() {
    const now = model.get("now");
    if (!now.turn) return;
    buttons(parts.buttons, now.buttons);
    buttons(parts.choices, now.choices);
    speak(now);
    help(now);
    figures(now);
    for (const box of boxes) for (const input of box.inputs) input.disabled = Boolean(now.closed);
    boxes.forEach((box, number) => mark(box, now.parts[number] ?? {}, number));
  }

  // Question and answer change together with new numbers: the page follows once, then aims.
  let due = false;
  let asked = null;
  function changed() {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (asked !== model.get("asked")) build();
      asked = model.get("asked");
      paint();
      lay();
      const now = model.get("now");
      if (now.turn === turn) return;
      turn = now.turn;
      aim(now.focus);
    });
  }

  function buttons(home, wanted) {
    const old = new Map([...home.children].map((made) => [made.dataset.press, made]));
    const next = wanted.filter((one) => one.press !== "next" || following()).map((one) => {
      const made = old.get(one.press) ?? html(home, "button", { type: "button" });
      made.dataset.press = one.press;
      if (made.textContent !== one.label) made.textContent = one.label;
      made.disabled = Boolean(one.shut);
      made.onclick = () => press(one.press);
      return made;
    });
    if (next.length !== home.children.length || next.some((made, n) => made !== home.children[n]))
      home.replaceChildren(...next);
  }

  // One message for one check: the region changes once, and only where it says something new.
  function speak(now) {
    const said = JSON.stringify([now.said, now.tone]);
    if (parts.verdict.dataset.said === said) return;
    parts.verdict.dataset.said = said;
    parts.verdict.dataset.tone = now.tone;
    parts.verdict.replaceChildren();
    for (const line of now.said) html(parts.verdict, "p", {}, line);
  }

  function mark(box, told, number) {
    box.told = told;
    box.said.replaceChildren();
    if (told.said) html(box.said, "strong", {}, told.said);
    if (told.more) html(box.said, "span", {}, ` ${told.more}`);
    box.said.dataset.tone = told.tone ?? "";
    const wrong = told.tone === "wrong" && box.text === (model.get("now").judged[number] ?? "");
    const ids = told.said ? box.said.id : told.tone ? parts.verdict.id : "";
    const marked = box instanceof Choice ? [box.row] : box.inputs;
    for (const input of marked) {
      if (wrong && box instanceof Box) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
      if (ids) input.setAttribute("aria-describedby", ids);
      else input.removeAttribute("aria-describedby");
    }
  }

  function unmark(box) {
    for (const input of box.inputs) input.removeAttribute("aria-invalid");
  }

  function help(now) {
    parts.help.replaceChildren();
    for (const one of now.help) {
      const block = html(parts.help, "section");
      const heading = html(block, "h4", { tabindex: "-1" }, one.heading);
      heading.dataset.kind = one.kind;
      const list = html(block, one.lines.length > 1 ? "ol" : "div");
      for (const line of one.lines) html(list, one.lines.length > 1 ? "li" : "p", {}, line);
      if (one.after) html(block, "p", {}, one.after);
    }
  }

  function figures(now) {
    const bytes = model.get("figures");
    const told = JSON.stringify([now.figures, bytes.map((one) => one.byteLength), now.drawn]);
    if (told === figured) return;
    figured = told;
    for (const address of addresses) URL.revokeObjectURL(address);
    addresses = bytes.map(png);
    parts.figures.replaceChildren();
    now.figures.forEach((one, number) => {
      const figure = html(parts.figures, "figure", { "data-kind": one.kind });
      if (addresses[number]) html(figure, "img", { src: addresses[number], alt: one.alt, lang: "en" });
      html(figure, "figcaption", {}, one.caption);
    });
  }

  function aim(place) {
    const [what, number] = place.split(" ");
    const heading = (kind) => [...parts.help.querySelectorAll(`[data-kind=${kind}]`)].at(-1);
    const targets = {
      box: () => boxes[Number(number) || 0]?.focus(false),
      select: () => boxes[Number(number) || 0]?.focus(true),
      language: () => parts.languages.querySelector("[aria-pressed=true]")?.focus(),
      hint: () => heading("hint")?.focus(),
      worked: () => heading("worked")?.focus(),
      heading: () => parts.question.focus(),
      next: () => {
        const made = root.querySelector("[data-press=next]");
        if (made) made.focus();
        else boxes[0]?.focus(false); // a second Enter there checks again and changes nothing
      },
    };
    targets[what]?.();
  }

  let drawn = "";
  function paint() {
    const bytes = model.get("picture");
    if (painted === bytes) return;
    painted = bytes;
    if (drawn) URL.revokeObjectURL(drawn);
    drawn = bytes.byteLength ? png(bytes) : "";
    if (drawn) parts.picture.src = drawn;
    else parts.picture.removeAttribute("src");
  }

  function hear(message) {
    if (message.kept) {
      kept = JSON.stringify(message.kept);
      if (!rest) rested();
    }
  }

  let kept = "";
  function rested() {
    rest = 0;
    const same = kept === JSON.stringify(texts());
    parts.saved.textContent = same && kept ? model.get("asked").saved : "";
  }

  let looked = "";
  function look() {
    root.closest(".jp-OutputArea-child")?.classList.add("seatwork-form-output");
    const dark = document.body.dataset.jpThemeLight === "false";
    root.dataset.theme = dark ? "dark" : "light";
    root.style.setProperty("--seatwork-picture", `${parts.figure?.offsetHeight ?? 0}px`);
    const scale = Math.min(4, Math.max(1, Math.ceil(window.devicePixelRatio * 2) / 2));
    const looks = JSON.stringify({ dark, scale });
    if (looks === looked || !root.isConnected) return;
    looked = looks;
    model.send({ page: { dark, scale } });
  }

  const release = guardKeys((place) => root.contains(place), keeps);
  root.addEventListener("submit", (event) => event.preventDefault());
  model.on("change:asked", changed);
  model.on("change:now", changed);
  model.on("change:picture", changed);
  model.on("msg:custom", hear);
  window.addEventListener("resize", look);
  const themes = new MutationObserver(look);
  themes.observe(document.body, { attributeFilter: ["data-jp-theme-light"] });
  const placed = new ResizeObserver(look);
  placed.observe(root);
  turn = model.get("now").turn ?? 0; // an answer shown before does not take the focus
  changed();
  return () => {
    clearTimeout(rest);
    themes.disconnect();
    placed.disconnect();
    release();
    window.removeEventListener("resize", look);
    model.off("change:asked", changed);
    model.off("change:now", changed);
    model.off("change:picture", changed);
    model.off("msg:custom", hear);
    for (const address of [...addresses, drawn]) URL.revokeObjectURL(address);
  };
}

export default { render };
