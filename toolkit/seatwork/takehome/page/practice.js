// A practice sheet and the planner, asked of the Python in the page. Pictures of questions were
// drawn when the page was written; new numbers have none.
const byId = (id) => document.getElementById(id);
const SIGNS = "abcdefghij";

const SHOWN = new Map(); // by question: its box, its attempt, what was typed

function question(ask, told, item, attempt, place, before = []) {
  const box = document.createElement("fieldset");
  if (place) place.replaceWith(box);
  else byId("sheet").append(box);
  make(box, "legend", item.id);
  make(box, "p", item.ask, { class: "ask" });
  const word = say("Answer", "Respuesta");
  const shown = told.pictures[item.id];
  if (shown?.picture && attempt === 1)
    drawing(strip(box, `${say("Drawing of", "Dibujo de")} ${item.id}`),
      say(shown.picture, shown.spoken ?? shown.picture),
      say(shown.alt, told.said[shown.alt] ?? shown.alt),
      (button, wide) => tell(button, ...(wide ? WHOLE : LARGER)));
  const typed = item.parts.map((part, n) => {
    const unit = part.unit ? ` [${part.unit}]` : "";
    const part_name = item.parts.length > 1 ? `${word} (${SIGNS[n]})` : word;
    const label = make(box, "label", `${part_name}${unit}, ${part.such} `);
    const input = make(label, "input", "", {
      type: "text", autocapitalize: "off", autocomplete: "off", spellcheck: "false",
      maxlength: "200", "data-part": `${item.id}-${n}` });
    input.value = before[n] ?? "";
    return input;
  });
  SHOWN.set(item.id, { box, attempt, typed });
  const check = make(box, "button", say("Check", "Comprobar"), { type: "button" });
  const hint = item.hints ? make(box, "button", say("Hint", "Pista"), { type: "button" }) : null;
  const fresh = make(box, "button", say("New numbers", "Números nuevos"), { type: "button" });
  const said = make(box, "p", "", { class: "said", role: "status" });
  let hints = 0;
  check.addEventListener("click", async () => {
    const found = await ask("check", { id: item.id, parts: typed.map((one) => one.value) });
    said.textContent = found.fault ??
      found.said.map((line, n) => [found.read[n], line].filter(Boolean).join("\n")).join("\n");
    if (!found.fault && found.kinds.every((kind) => kind === "right" || kind === "own step"))
      said.textContent += `\n${found.worked.join("\n")}`;
  });
  hint?.addEventListener("click", async () => {
    said.textContent = await ask("hint", { id: item.id, number: hints });
    hints = (hints + 1) % item.hints;
  });
  fresh.addEventListener("click", async () => {
    const next = await ask("renew", { id: item.id });
    question(ask, told, next, attempt + 1, box);
    byId("sheet").querySelector(`[data-part="${item.id}-0"]`).focus();
  });
}

async function planner(ask) {
  const stock = await ask("stock", {});
  for (const [id, names] of [["material", stock.materials], ["machine", stock.machines]])
    for (const name of names) make(byId(id), "option", name);
  const go = byId("go");
  go.disabled = false;
  go.addEventListener("click", async () => {
    const made = await ask("plan", {
      note: byId("note").value, material: byId("material").value, machine: byId("machine").value });
    const home = byId("plan");
    home.replaceChildren();
    if (made.fault) return make(home, "p", made.fault, { class: "warn" });
    for (const [heading, rows] of made.blocks) {
      const behind = heading.startsWith("Why") || heading.startsWith("Sources");
      const place = behind ? make(home, "details") : home;
      if (heading) make(place, behind ? "summary" : "h3", heading);
      const body = make(make(place, "table"), "tbody");
      for (const [label, text] of rows) {
        const row = make(body, "tr");
        make(row, "th", label, { scope: "row" });
        make(row, "td", text);
      }
    }
    return made;
  });
}

async function practice() {
  const told = await unpackData("told");
  const state = byId("state");
  try {
    const ask = await startPython("seatwork.takehome.inside.desk");
    globalThis.seatwork = { ask };
    if (told.sheet) {
      const sheet = await ask("open", { sheet: told.sheet, language: chosen() });
      if (sheet.fault) throw new Error(sheet.fault);
      for (const item of sheet.items) question(ask, told, item, 1);
    }
    languages(async (language) => {
      if (!told.sheet) return;
      for (const item of (await ask("speak", { language })).items) {
        const { box, attempt, typed } = SHOWN.get(item.id);
        question(ask, told, item, attempt, box, typed.map((one) => one.value));
      }
    });
    tell(state, "Ready. No network is used.", "Listo. No se usa ninguna red.");
    globalThis.seatwork.ready = true;
    if (byId("go")) await planner(ask);
  } catch (error) {
    globalThis.seatwork = { fault: String(error) };
    tell(state, ...whyNot(error,
      "Python did not start on this device: nothing can be checked or planned here.",
      "Python no arrancó en este aparato: aquí no se puede comprobar ni planear nada."));
  }
}
practice();
