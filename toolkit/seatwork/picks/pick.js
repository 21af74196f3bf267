// The form of a pick: look, bet, lock, see. Native inputs; plain keys stay in the form.

// Names in a page must differ from pick to pick; every widget loads this file anew.
const newName = () => `seatwork-pick-${Math.random().toString(36).slice(2, 10)}`;

function html(parent, tag, attributes = {}, text = "") {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = text;
  parent.append(element);
  return element;
}

function button(parent, words, press) {
  const made = html(parent, "button", { type: "button" }, words);
  made.addEventListener("click", press);
  return made;
}

// A choice is a row; the whole row can be pressed.
function choice(home, name, asked, [letter, words]) {
  const row = html(home, "div", { class: "seatwork-choice" });
  const label = html(row, "label");
  const type = asked.kind === "several" ? "checkbox" : "radio";
  if (!asked.room) html(label, "input", { type, name, value: letter });
  if (asked.kind !== "letter") html(label, "b", {}, letter);
  html(label, "span", {}, words);
  return row;
}

// For a class: minus, a count, plus.
function hands(row, words, told) {
  const less = html(row, "button", { type: "button", "aria-label": `${words}: ${told.less}` }, "−");
  const count = html(row, "output", { "aria-label": `${words}: ${told.hands}` }, "0");
  const more = html(row, "button", { type: "button", "aria-label": `${words}: ${told.more}` }, "+");
  const turn = (by) => {
    count.textContent = Math.max(0, Number(count.textContent) + by);
  };
  less.addEventListener("click", () => turn(-1));
  more.addEventListener("click", () => turn(1));
  row.classList.add("seatwork-hands");
}

function box(home, name, number, label) {
  const row = html(home, "p", { class: "seatwork-choice" });
  html(row, "label", { for: `${name}-${number}` }, label);
  return html(row, "input", {
    type: "text", id: `${name}-${number}`, autocomplete: "off", inputmode: "decimal", size: 8 });
}

function sureness(home, name, told) {
  const group = html(home, "fieldset", { class: "seatwork-sure" });
  html(group, "legend", {}, told.sure);
  for (const [value, words] of [["guessing", told.guessing], ["sure", told.fairly]]) {
    const label = html(group, "label");
    html(label, "input", { type: "radio", name: `${name}-sure`, value });
    html(label, "span", {}, words);
  }
  return group;
}

function build(el, asked, name) {
  const root = html(el, "div", { class: "seatwork-pick-form", lang: asked.language });
  root.toggleAttribute("data-projector", asked.room);
  const head = html(root, "p", { class: "seatwork-pick-title" });
  html(head, "strong", {}, asked.title);
  html(head, "span", {}, ` ${asked.place}`);
  const form = html(root, "form", { novalidate: "" });
  const group = html(form, "fieldset", { class: "seatwork-choices" });
  html(group, "legend", {}, asked.question);
  for (const one of asked.choices) {
    const row = choice(group, name, asked, one);
    if (asked.room)
      hands(row, asked.kind === "letter" ? one[1] : `${one[0]} ${one[1]}`, asked.words);
  }
  asked.asks.forEach((label, n) => box(group, name, n, label));
  if (!asked.room) sureness(form, name, asked.words);
  const turns = html(form, "div", { class: "seatwork-turns" });
  html(turns, "button", { type: "submit" }, asked.room ? asked.words.show : asked.words.lock);
  const said = html(root, "p", { class: "seatwork-pick-said", role: "status" });
  const after = html(root, "div", { class: "seatwork-pick-after", tabindex: "-1" });
  const cover = html(root, "div", { class: "seatwork-pick-cover" }, asked.cover);
  return { root, form, turns, said, after, cover };
}

function tell(after, answer) {
  after.replaceChildren();
  const lead = [answer.right, answer.after].filter(Boolean).join(" ");
  html(after, "p", {}, lead);
  if (answer.drawn) html(after, "p", {}, answer.drawn);
  if (answer.heading) html(after, "p", { class: "seatwork-pick-title" }, `${answer.heading}:`);
  const list = answer.heading ? html(after, "ul") : null;
  for (const [bet, says] of answer.whys) {
    const item = html(list, "li");
    html(item, "b", {}, bet);
    html(item, "span", {}, ` ${says}`);
  }
}

// The two languages: all picks of the page change together.
function languages(root, asked, model) {
  const row = html(root, "div", { class: "seatwork-languages" });
  for (const [code, own] of asked.languages) {
    const made = html(row, "button", {
      type: "button", lang: code, "aria-pressed": String(code === asked.language) }, own);
    made.addEventListener("click", () => model.send({ speak: code }));
  }
  root.prepend(row);
}

// Another language builds the form anew; what was chosen and not yet locked stays chosen.
function render({ model, el }) {
  let mounted = mount({ model, el });
  const again = () => {
    const chosen = mounted.chosen();
    const here = el.contains(document.activeElement);
    mounted.leave();
    el.replaceChildren();
    mounted = mount({ model, el });
    mounted.choose(chosen);
    if (here) el.querySelector(".seatwork-languages [aria-pressed=true]").focus();
  };
  model.on("change:asked", again);
  return () => {
    model.off("change:asked", again);
    mounted.leave();
  };
}

function mount({ model, el }) {
  const name = newName();
  const asked = model.get("asked");
  const parts = build(el, asked, name);
  const { root, form, turns, said, after, cover } = parts;
  languages(root, asked, model);
  const inputs = () => [...form.querySelectorAll("fieldset input")];
  const typed = () =>
    asked.kind === "number"
      ? inputs().filter((one) => one.type === "text").map((one) => one.value)
      : inputs().filter((one) => one.name === name && one.checked).map((one) => one.value);
  const sure = () => {
    const chosen = form.querySelector(`[name="${name}-sure"]:checked`);
    return chosen ? chosen.value === "sure" : null;
  };
  let mine = false; // this page asked for the answer that comes next

  function ask(message) {
    mine = true;
    model.send({ ...message, dark: document.body.dataset.jpThemeLight === "false" });
  }

  function lock(bet) {
    ask(asked.room ? { hands: true } : { lock: bet, sure: sure() });
  }

  const idea = asked.room ? null : button(turns, asked.words.idea, () => lock("?"));
  const again = button(turns, asked.words.again, () => ask({ again: true }));

  function show() {
    const answer = model.get("answer");
    const seen = answer.said !== undefined;
    for (const one of inputs()) one.disabled = seen;
    const sureGroup = form.querySelector(".seatwork-sure");
    if (sureGroup) sureGroup.hidden = seen;
    turns.firstChild.hidden = seen;
    if (idea) idea.hidden = seen;
    again.hidden = !seen || Boolean(answer.open);
    cover.hidden = seen || !asked.cover;
    after.hidden = !seen;
    root.toggleAttribute("data-seen", seen);
    if (seen && answer.bet) mark(answer.bet);
    for (const row of form.querySelectorAll(".seatwork-choice"))
      row.toggleAttribute("data-bet", seen && Boolean(row.querySelector("input:checked")));
    if (seen) tell(after, answer);
    said.textContent = [answer.said, answer.first, answer.trouble].filter(Boolean).join(" ");
    if (mine && seen) after.focus({ preventScroll: true });
    else if (mine && !answer.trouble) inputs()[0]?.focus();
    mine = false;
  }

  // A bet of an earlier run is shown as it was made.
  function mark(bet) {
    if (asked.kind === "number") {
      const boxes = inputs().filter((one) => one.type === "text");
      boxes.forEach((one, n) => (one.value = bet[n] && bet[n] !== "?" ? bet[n] : one.value));
      return;
    }
    for (const one of inputs().filter((each) => each.name === name))
      one.checked = bet.includes(one.value);
  }

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    lock(typed());
  });
  root.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && !event.shiftKey && event.target.type === "radio") {
      event.preventDefault();
      form.requestSubmit();
    }
  });

  const release = guardKeys((place) => root.contains(place));
  // The still below stands in for this form on paper and in the file.
  const placed = new ResizeObserver(() =>
    root.closest(".jp-OutputArea-child")?.classList.add("seatwork-live-output"));
  placed.observe(root);
  model.on("change:answer", show);
  show();
  const leave = () => {
    placed.disconnect();
    release();
    model.off("change:answer", show);
  };
  const chosen = () =>
    inputs().map((one) => (one.type === "text" ? one.value : one.checked));
  const choose = (before) => {
    if (model.get("answer").said !== undefined) return;
    inputs().forEach((one, n) => (one.type === "text" ? (one.value = before[n] ?? "") :
      (one.checked = before[n] === true)));
  };
  return { leave, chosen, choose };
}

export default { render };
