// Plays what was recorded: a slider at every step, or a picture for each choice. Nothing is
// worked out here, and nothing moves without a hand.
const SAID_AFTER = 500; // ms without a move, before a screen reader is told
let numbered = 0;
const titles = new Map();
const [UNITS, LETTERS_OF_PAGE] = [1280, 25]; // a picture's width and its letters [its own units]
// How high the letters of a picture are now [px]; the picture of a low window is not as wide as
// its place.
function letters(picture) {
  const box = picture?.viewBox?.baseVal;
  const wide = picture?.clientWidth ?? UNITS;
  const units = box ? Math.max(box.width, (box.height * wide) / picture.clientHeight) : UNITS;
  return (LETTERS_OF_PAGE * wide) / units;
}
const labelled = (button, wide) => {
  button.textContent = wide ? "Whole picture" : "Larger picture";
};

// A bench that stands on the page twice has two names.
function named(title) {
  const count = (titles.get(title) ?? 0) + 1;
  titles.set(title, count);
  return count > 1 ? `${title} (${count})` : title;
}

class Played {
  constructor(home, told) {
    this.told = told;
    this.home = home;
    this.title = named(told.title);
    this.live = home.dataset.bench.replace("bench", "live"); // the block of its live one, if any
    const { title } = this;
    this.root = make(home, "section", "", { class: "player", "aria-label": title });
    home.prepend(this.root);
    if (told.opens) this.button = make(this.root, "button", told.opens, { type: "button" });
    this.body = make(this.root, "div", "", { class: "player-body" });
    this.frame = strip(this.body, `Picture of ${title}`);
    this.frame.classList.add("player-picture");
    larger(this.frame, () => letters(this.frame.querySelector("svg, img")), labelled);
    this.trouble = make(this.body, "p", "", { class: "player-trouble", role: "status" });
    this.set = make(this.body, "p", "", { class: "player-set" });
    this.readout = make(this.body, "div", "", { class: "player-readout" });
    this.words = make(this.body, "p", "", { class: "player-words" });
    this.said = make(this.body, "p", "", { class: "player-said", role: "status" });
    if (told.others.length)
      make(this.body, "p",
        `In the notebook this bench also has: ${told.others.map(lowered).join("; ")}.`,
        { class: "player-others" });
    home.classList.add("plays");
  }

  show(frame) {
    this.trouble.textContent = frame.trouble ?? "";
    if (frame.trouble !== undefined) return;
    read(this.readout, { rows: frame.rows, compared: false });
    this.words.textContent = frame.text;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => { this.said.textContent = frame.text; }, SAID_AFTER);
  }
}

const lowered = (label) => label.charAt(0).toLowerCase() + label.slice(1);

// ---------------------------------------------------------------- one slider

class Slider extends Played {
  async start() {
    const { told } = this;
    this.base = told.page.state;
    this.picture = new Picture(told.page);
    this.frame.append(this.picture.svg);
    const id = `player-${++numbered}`;
    make(this.set, "label", `${told.label} `, { for: id });
    this.output = make(this.set, "output", "", { for: id });
    this.input = make(this.set, "input", "", {
      type: "range", id, min: told.first, max: told.first + told.frames.length - 1, step: 1 });
    this.input.value = told.start;
    this.input.addEventListener("input", () => this.move());
    this.input.addEventListener("keydown", (event) => this.page(event));
    this.go({ ...told.before, glide: false });
    await this.picture.fill(told.layers.map(unbase), this.pixels(told.before));
    if (!this.button) return;
    this.body.hidden = true;
    this.home.classList.remove("plays");
    this.button.addEventListener("click", () => {
      this.button.hidden = true;
      this.body.hidden = false;
      this.home.classList.add("plays");
      this.input.focus();
    });
  }

  page(event) {
    const by = { PageUp: 1, PageDown: -1 }[event.key];
    if (!by) return;
    event.preventDefault();
    this.input.value = Number(this.input.value) + by * this.told.paging;
    this.move();
  }

  move() {
    this.go(this.told.frames[Number(this.input.value) - this.told.first]);
  }

  go(frame) {
    this.show(frame);
    this.output.textContent = frame.shown;
    this.input.setAttribute("aria-valuetext", frame.trouble ?? frame.shown);
    if (frame.trouble !== undefined) return;
    const move = {};
    for (const n of this.moved ?? []) move[n] = this.base[n];
    for (const [n, change] of Object.entries(frame.move)) move[n] = { ...this.base[n], ...change };
    this.moved = Object.keys(frame.move);
    this.picture.follow({ move, text: frame.text, glide: frame.glide ?? this.told.glides });
    if (frame.pixels && frame !== this.told.before) this.picture.repaint(this.pixels(frame));
  }

  pixels(frame) {
    return frame.pixels ? unbase(frame.pixels) : new Uint8Array(0);
  }
}

// ---------------------------------------------------------------- one picture a choice

class Choices extends Played {
  async start() {
    const { told } = this;
    this.opened = told.opened ? 1 : 0;
    const id = `player-${++numbered}`;
    make(this.set, "label", `${told.label} `, { for: id });
    this.select = make(this.set, "select", "", { id });
    for (const choice of told.choices) make(this.select, "option", choice.name);
    this.select.value = told.start;
    this.image = make(this.frame, "img");
    this.body.prepend(this.set);
    if (this.button) this.frame.after(this.button);
    this.select.addEventListener("change", () => this.turn(told.opened ? 1 : 0));
    this.button?.addEventListener("click", () => this.turn(1 - this.opened));
    this.turn(this.opened);
  }

  turn(opened) {
    const { told } = this;
    this.opened = opened;
    const { shown } = told.choices.find((choice) => choice.name === this.select.value);
    const still = shown[Math.min(opened, shown.length - 1)];
    this.image.src = `data:image/png;base64,${still.png}`;
    this.image.alt = still.text;
    if (this.button) this.button.textContent = opened ? told.closes : told.opens;
    this.show(still);
  }
}

async function play(home) {
  const told = await unpackData(home.dataset.bench);
  document.getElementById(home.dataset.bench).remove();
  const player = new (told.choices ? Choices : Slider)(home, told);
  await player.start();
  return player;
}

// Pictures that stay still on the page.
for (const image of document.querySelectorAll("main p > img")) {
  const home = image.parentElement;
  home.classList.add("strip");
  for (const [name, value] of [["role", "group"], ["tabindex", "0"], ["aria-label", "Picture"]])
    home.setAttribute(name, value);
  larger(home, () => letters(image), labelled);
}

// A browser too old for one of these parts keeps the still, which stands there already.
const PLAYED = [...document.querySelectorAll("[data-bench]")].map((home) =>
  play(home).catch(() => {
    home.querySelector(".player")?.remove();
    home.classList.remove("plays");
  }));
