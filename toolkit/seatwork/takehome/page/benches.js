// Benches worked by the Python in the page: every control, as in the notebook. Until Python is
// there, and where it does not start, the recorded slider plays.
const STARTS = "Python is starting: more settings come in some seconds. This slider moves already.";
const STAYS = "Python did not start on this device: this slider plays, the rest is in the notebook.";
const FAULT = "The bench has a fault; the last picture stays.";
const BOX = "□"; // stands for a letter that the page has no shape of

class Shapes extends Map {
  get(key) {
    return super.get(key) ?? super.get(key[0] + BOX);
  }
}

// What a control row asks of a widget's model.
class RowModel {
  constructor(spec, now, asked) {
    this.held = { spec, now };
    this.send = asked;
    this.heard = new Map();
  }

  get(name) {
    return this.held[name];
  }

  on(event, deed) {
    this.heard.set(event, deed);
  }

  tell(name, told) {
    this.held[name] = told;
    this.heard.get(`change:${name}`)?.();
  }
}

class Live {
  constructor(name, told, shapes, ask) {
    Object.assign(this, { name, told, shapes, ask, parts: {}, unfolded: false });
  }

  // Asks for the bench; it is put on the page by `stand`.
  async open() {
    const first = await this.ask("open", { name: this.name, told: this.told });
    this.specs = first.specs;
    this.first = first;
  }

  async stand(home, title) {
    this.root = document.createElement("section");
    this.root.className = "player live";
    this.root.setAttribute("aria-label", title);
    this.turns = make(this.root, "p", "", { class: "player-turns" });
    this.frame = strip(this.root, `Picture of ${title}`);
    this.frame.classList.add("player-picture");
    larger(this.frame, () => letters(this.frame.querySelector("svg")), labelled);
    this.trouble = make(this.root, "p", "", { class: "player-trouble", role: "status" });
    const sets = make(this.root, "div", "", { class: "player-sets" });
    const tools = make(this.root, "p", "", { class: "player-turns" });
    this.folded = make(this.root, "div", "", { class: "player-sets" });
    this.readout = make(this.root, "div", "", { class: "player-readout" });
    this.words = make(this.root, "p", "", { class: "player-words" });
    this.said = make(this.root, "p", "", { class: "player-said", role: "status" });
    for (const [control, spec] of Object.entries(this.specs)) {
      const place = spec.back ? this.turns : spec.folded ? this.folded : sets;
      this.parts[control] = this.part(place, control, spec);
    }
    this.fold = make(tools, "button", "", { type: "button" });
    this.fold.hidden = !Object.values(this.specs).some((spec) => spec.folded);
    this.fold.addEventListener("click", () => this.unfold(!this.unfolded));
    make(tools, "button", "Back to start", { type: "button" })
      .addEventListener("click", () => this.want(() => this.ask("reset", { name: this.name })));
    this.unfold(false);
    await this.follow(this.first);
    const held = home.querySelector(".player");
    const focused = held.contains(document.activeElement);
    held.replaceWith(this.root);
    home.classList.add("plays");
    if (focused) this.root.querySelector('input[type="range"]:not([hidden] *), button').focus();
  }

  unfold(open) {
    this.unfolded = open;
    this.folded.hidden = !open;
    this.fold.textContent = open ? "Fewer settings" : "More settings";
    this.fold.setAttribute("aria-expanded", String(open));
  }

  // ---------------------------------------------------------------- controls

  part(place, control, spec) {
    if (spec.sort === "number") return this.row(place, control, spec);
    if (spec.sort === "switch" && spec.back) {
      const node = make(place, "button", "", { type: "button" });
      node.addEventListener("click", () => this.set(control, !this.values[control]));
      return { node, show: ({ value }) => { node.textContent = value ? spec.back : spec.label; } };
    }
    const node = make(place, "label", "", { class: "player-choice" });
    if (spec.sort === "switch") {
      const box = make(node, "input", "", { type: "checkbox" });
      node.append(spec.label);
      box.addEventListener("change", () => this.set(control, box.checked));
      return { node, show: ({ value }) => { box.checked = value; } };
    }
    node.append(spec.label);
    const menu = make(node, "select");
    for (const option of spec.options) make(menu, "option", option);
    menu.addEventListener("change", () => this.set(control, menu.value));
    return { node, show: ({ value }) => { menu.value = value; } };
  }

  row(place, control, spec) {
    const node = make(place, "div");
    const ends = ({ low, high }) => ({ name: control, label: spec.label, page: spec.page, low, high });
    const first = this.first.controls[control];
    const told = (state) => ({ asked: "", trouble: "", ...state });
    const model = new RowModel(ends(first), told(first), (question) => this.answer(control, question));
    rowView.render({ model, el: node });
    const show = (state) => {
      const { low, high } = model.get("spec");
      if (state.low !== low || state.high !== high) model.tell("spec", ends(state));
      model.tell("now", told(state));
    };
    return { node, show, model };
  }

  // A row waits for the answer to its question, a refused one too.
  async answer(control, { asked, step, typed }) {
    const { model, show } = this.parts[control];
    const answer = await this.set(control, typed ?? { step }, asked);
    const state = answer?.controls?.[control] ?? model.get("now");
    show({ ...state, asked, trouble: answer ? answer.trouble : FAULT });
  }

  set(control, value, asked) {
    const values = { [control]: value };
    return this.want(() => this.ask("set", { name: this.name, values }),
      this.specs[control].glides === true, asked && control);
  }

  async want(deed, glide = false, waits = "") {
    try {
      const answer = await deed();
      await this.follow(answer, glide, waits);
      return answer;
    } catch {
      this.trouble.textContent = FAULT;
      return null;
    }
  }

  // ---------------------------------------------------------------- what is shown

  async follow(answer, glide = false, waits = "") {
    if (answer.picture !== undefined && answer.picture !== this.shown) await this.draw(answer);
    else if (answer.move) this.picture.follow({ move: answer.move, text: answer.text, glide });
    this.trouble.textContent = answer.trouble;
    if (answer.rows) read(this.readout, { rows: answer.rows, compared: false });
    for (const [control, state] of Object.entries(answer.controls ?? {})) {
      (this.values ??= {})[control] = state.value;
      const { node, show } = this.parts[control];
      node.hidden = !state.seen;
      if (control !== waits) show(state);
    }
    if (answer.trouble) this.putBack(waits);
    if (answer.text === undefined) return;
    this.words.textContent = answer.text;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => { this.said.textContent = answer.text; }, SAID_AFTER);
  }

  // A refused menu or box shows again what is so.
  putBack(waits) {
    for (const [control, { show, model }] of Object.entries(this.parts))
      if (control !== waits && !model) show({ value: this.values[control] });
  }

  async draw(answer) {
    const told = this.told.pictures[answer.picture];
    const known = told.fonts.flatMap((font, n) =>
      Object.entries(this.shapes[font]).map(([sign, shape]) => [n, sign, ...shape]));
    const picture = new Picture({ ...told, letters: known, state: [] });
    picture.letters = new Shapes(picture.letters);
    picture.follow({ move: answer.move, text: answer.text });
    await picture.fill(told.layers.map(unbase), new Uint8Array(0));
    this.frame.replaceChildren(picture.svg);
    this.picture?.close();
    this.picture = picture;
    this.shown = answer.picture;
  }
}

// ---------------------------------------------------------------- from the recorded to the live

const pause = (ms) => new Promise((done) => { setTimeout(done, ms); });

// What a hand has done to the recorded slider, as values for the bench.
function carried({ told, input, body, button }) {
  if (button && body.hidden) return null;
  const moved = Number(input.value) !== told.start;
  return button || moved ? { ...told.turned, [told.control]: { step: Number(input.value) } } : null;
}

async function enliven(player, name, shapes, ask) {
  const live = new Live(name, await unpackData(name), shapes, ask);
  document.getElementById(name).remove();
  await live.open();
  while (player.home.querySelector(".player :active")) await pause(200);
  const values = carried(player);
  await live.stand(player.home, player.title);
  if (values) await live.want(() => ask("set", { name, values }));
  return live;
}

async function liveBenches() {
  const players = (await Promise.all(PLAYED)).filter(
    (player) => player && document.getElementById(player.live));
  for (const player of players) {
    player.state = make(player.body, "p", STARTS, { class: "player-others", role: "status" });
    player.set.after(player.state);
  }
  globalThis.seatwork = { live: [] };
  try {
    const { shapes, told } = await unpackData("letters");
    const ask = await startPython("seatwork.takehome.inside.bench");
    await ask("begin", told);
    for (const player of players)
      globalThis.seatwork.live.push(await enliven(player, player.live, shapes, ask));
    globalThis.seatwork.ready = true;
  } catch (error) {
    globalThis.seatwork.fault = String(error);
    const [stays] = whyNot(error, STAYS, "");
    for (const { state } of players) if (state.isConnected) state.textContent = stays;
  }
}
liveBenches();
