// A graded sheet: a form that keeps what is typed and writes the notebook's own answer file. It
// knows what is asked, and nothing of what is right.
const byId = (id) => document.getElementById(id);
const SIGNS = "abcdefghij";
const partNames = (item, n) =>
  ["Answer", "Respuesta"].map((word) => (item.parts.length > 1 ? `${word} (${SIGNS[n]})` : word));
const points = (n) => [`${n} point${n === 1 ? "" : "s"}`, `${n} punto${n === 1 ? "" : "s"}`];

class Sheet {
  constructor(sheet) {
    this.sheet = sheet;
    this.kept = new Kept(sheet, (text) => {
      byId("warn").hidden = !text;
      tell(byId("warn"), text, WARNINGS.get(text));
    });
    this.reads = new Map();
    this.boxes = new Map(); // by question and part: what is typed into, and what is told below
    this.timers = new Map();
    languages(() => { byId("done").textContent = ""; });
    name(byId("text"), "The answers as text", "Las respuestas como texto");
    for (const item of sheet.items) this.question(item);
    byId("save").addEventListener("click", () => this.save());
    byId("copy").addEventListener("click", () => this.copy());
    byId("print").addEventListener("click", () => window.print());
    byId("clear").addEventListener("click", () => this.clear());
    byId("form").addEventListener("submit", (event) => event.preventDefault());
    this.unclear();
  }

  // What a text of the sheet is in Spanish.
  other(text) { return this.sheet.said[text] ?? text; }

  question(item) {
    const box = make(byId("form"), "fieldset", "", { id: `item-${item.id}` });
    both(box, "legend", ...points(item.points).map((told) => `${item.id} (${told})`));
    both(box, "p", item.ask, this.other(item.ask), { class: "ask" });
    if (item.picture)
      follow(drawing(name(strip(box, ""), `Drawing of ${item.id}`, `Dibujo de ${item.id}`),
        item.picture, item.alt, (button, wide) => tell(button, ...(wide ? WHOLE : LARGER))),
      item, this.other(item.alt));
    else if (item.alt) both(box, "p", item.alt, this.other(item.alt));
    this.reads.set(item.id, item.parts.map((part, n) =>
      part.kind === "choice" ? this.choice(box, item, part, n) : this.entry(box, item, part, n)));
    const sure = make(box, "label", "", { class: "sure" });
    const tick = make(sure, "input", "", { type: "checkbox" });
    tick.checked = this.kept.answers[item.id].sure;
    tick.addEventListener("change", () => {
      this.kept.answers[item.id].sure = tick.checked;
      this.kept.keep();
    });
    both(sure, "span", " I am sure of this one", " Estoy seguro de esta");
  }

  choice(box, item, part, n) {
    const group = make(box, "div", "", { role: "radiogroup" });
    name(group, ...partNames(item, n).map((word) => `${item.id} ${word}`));
    if (item.parts.length > 1) both(group, "p", ...partNames(item, n), { class: "part" });
    part.options.forEach((text, at) => {
      const label = make(group, "label", "", { class: "option" });
      const radio = make(label, "input", "", {
        type: "radio", name: `${item.id} ${n}`, value: SIGNS[at] });
      radio.checked = this.kept.answers[item.id].parts[n] === SIGNS[at];
      radio.addEventListener("change", () => this.type(item, n, radio.value));
      both(label, "span", ...[text, this.other(text)].map((told) => ` ${SIGNS[at]}) ${told}`));
    });
    return null;
  }

  entry(box, item, part, n) {
    const unit = part.unit ? ` [${part.unit}]` : "";
    const label = make(box, "label");
    const [english, spanish] = partNames(item, n);
    both(label, "span", `${english}${unit}, ${part.such} `,
      `${spanish}${unit}, ${this.other(part.such)} `);
    const id = `read-${item.id}-${n}`;
    const input = make(label, "input", "", {
      type: "text", autocapitalize: "off", autocomplete: "off", spellcheck: "false",
      "aria-describedby": id, "data-part": `${item.id}-${n}` });
    input.value = this.kept.answers[item.id].parts[n];
    input.addEventListener("input", () => this.type(item, n, input.value));
    input.addEventListener("change", () => this.look(item, n));
    const place = make(box, "p", "", { class: "read", role: "status", id });
    this.boxes.set(`${item.id} ${n}`, { input, place });
    return place;
  }

  // Says below a box that nobody could read what stands there; never that it can be read. The
  // reader, where it has started, says it in its own words.
  look(item, n) {
    const part = item.parts[n];
    const no = unreadable(this.kept.answers[item.id].parts[n], part, this.sheet.shapes);
    const { input, place } = this.boxes.get(`${item.id} ${n}`);
    input.setAttribute("aria-invalid", String(no));
    place.classList.toggle("unclear", no);
    if (this.reader) return no;
    const such = part.kind === "order" ? ["", ""] :
      ["one number, its unit if you like, and no other words: ",
        "un solo número, con su unidad si quiere, y ninguna otra palabra: "];
    tell(place, no ? `This cannot be read. Write ${such[0]}${part.such}.` : "",
      no ? `Esto no se puede leer. Escriba ${such[1]}${this.other(part.such)}.` : "");
    return no;
  }

  // The boxes that nobody could read, by their names.
  unclear() {
    return this.sheet.items.flatMap((item) => item.parts.flatMap((part, n) => {
      if (part.kind === "choice" || !this.look(item, n)) return [];
      return [item.parts.length > 1 ? `${item.id} (${SIGNS[n]})` : item.id];
    })).join(", ");
  }

  type(item, n, text) {
    this.kept.answers[item.id].parts[n] = clean(text);
    this.kept.keep();
    byId("done").textContent = "";
    if (item.parts[n].kind === "choice") return;
    const { input } = this.boxes.get(`${item.id} ${n}`);
    if (input.getAttribute("aria-invalid") === "true") this.look(item, n);
    clearTimeout(this.timers.get(item.id));
    this.timers.set(item.id, setTimeout(() => this.tell(item), 150));
  }

  // "read as", where the reader is in the page and has started.
  async tell(item) {
    if (!this.reader) return;
    const typed = [...this.kept.answers[item.id].parts];
    const read = await this.reader("read", { typed, parts: item.parts, said: this.sheet.reads });
    if (typed.join("\n") !== this.kept.answers[item.id].parts.join("\n")) return;
    this.reads.get(item.id).forEach((place, n) => {
      if (place) tell(place, ...read[n]);
    });
  }

  // The very bytes that the notebook's worksheet would write.
  content() {
    const { learner, sheet, form, form_id, secret } = this.sheet;
    const answers = Object.fromEntries(Object.entries(this.kept.answers)
      .filter(([, one]) => one.parts.some(Boolean) || one.sure)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([id, { parts, sure }]) => [id, { parts, attempt: 1, tries: 0, hints: 0, sure }]));
    const said = { format: form_id ? 3 : 1, learner, sheet, form, answers };
    const whole = form_id ? { ...said, form_id, seal: sealOf({ ...said, form_id }, secret) } : said;
    return `${JSON.stringify(whole)}\n`;
  }

  get name() {
    const { learner, sheet, form } = this.sheet;
    return `${learner}-${sheet}-${form}.json`;
  }

  said(english, spanish) {
    const left = this.sheet.items
      .filter(({ id }) => !this.kept.answers[id].parts.every(Boolean)).map(({ id }) => id).join(", ");
    const unclear = this.unclear();
    const told = [[english, spanish]];
    if (left) told.push([`Not answered in full: ${left}.`, `Sin responder del todo: ${left}.`]);
    if (unclear)
      told.push([`Cannot be read as it stands: ${unclear}. Mend it, then do this again.`,
        `No se puede leer como está: ${unclear}. Corríjalo y hágalo otra vez.`]);
    tell(byId("done"), ...[0, 1].map((n) => told.map((one) => one[n]).join(" ")));
    byId("done").scrollIntoView({ block: "nearest" });
  }

  save() {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([this.content()], { type: "application/json" }));
    link.download = this.name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    this.said(`Saved as ${this.name} among the downloads of this browser. Hand that file in.`,
      `Guardado como ${this.name} entre las descargas de este navegador. Entregue ese archivo.`);
  }

  async copy() {
    try {
      await navigator.clipboard.writeText(this.content());
      this.said("Copied. Paste it into a message to your instructor and change nothing in it.",
        "Copiado. Péguelo en un mensaje a su instructor y no cambie nada en él.");
    } catch {
      byId("text").hidden = false;
      byId("text").value = this.content();
      byId("text").select();
      this.said("This browser does not let the page copy. Copy the text in the box yourself.",
        "Este navegador no deja copiar a la página. Copie usted el texto del recuadro.");
    }
  }

  clear() {
    const asked = say(
      "Clear this sheet? What was typed here is deleted from this browser for good. " +
        "Save the answer file first.",
      "¿Borrar esta hoja? Lo que escribió aquí se borra para siempre de este navegador. " +
        "Guarde antes el archivo de respuestas.");
    if (!window.confirm(asked)) return;
    this.kept.clear();
    window.location.reload();
  }
}

async function graded() {
  const sheet = await unpackData("sheet");
  byId("sheet").remove();
  globalThis.seatwork = new Sheet(sheet);
}
const shown = graded();
shown.catch(() => {
  byId("warn").hidden = false;
  tell(byId("warn"),
    "This browser is too old for this page. Answer on paper: the sheet can be printed by your instructor.",
    "Este navegador es demasiado viejo para esta página. Responda en papel: su instructor puede imprimir la hoja.");
});
