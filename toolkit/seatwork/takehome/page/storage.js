// What a sheet keeps in the browser, by learner, sheet, form and what is asked. All pages opened
// from files share one storage, and a second tab may have the same sheet open: nothing that this
// page has not read is ever written over.
const LONGEST = 200; // signs, counted as the answer file counts them
const OFF = "This browser keeps nothing for this page (a private window, or storage is full or off). " +
  "Save the answer file before you close it.";
const TWICE = "This sheet is open a second time and was changed there. Nothing was overwritten. " +
  "Close one of the two, then load this page again.";
const DAMAGED = "What this browser had kept for this sheet cannot be read. It was set aside, not " +
  "deleted; look your answers over before you hand them in.";
const WARNINGS = new Map([
  [OFF, "Este navegador no guarda nada de esta página (una ventana privada, o el espacio está " +
    "lleno o apagado). Guarde el archivo de respuestas antes de cerrarla."],
  [TWICE, "Esta hoja está abierta dos veces y se cambió en la otra. No se sobrescribió nada. " +
    "Cierre una de las dos y vuelva a cargar esta página."],
  [DAMAGED, "Lo que este navegador había guardado de esta hoja no se puede leer. Se apartó, no se " +
    "borró; revise sus respuestas antes de entregarlas."],
]);

// Half of a sign can be typed or pasted; no file may hold it.
const HALF = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
const clean = (text) => [...text.replace(HALF, "\uFFFD")].slice(0, LONGEST).join("").trim();

class Kept {
  constructor(sheet, warn) {
    this.warn = warn;
    this.key = `seatwork ${sheet.learner} ${sheet.sheet} ${sheet.form} ${sheet.asked}`;
    this.answers = {};
    for (const item of sheet.items)
      this.answers[item.id] = { parts: item.parts.map(() => ""), sure: false };
    this.stamp = null;
    this.behind = false;
    this.open();
    window.addEventListener("storage", (event) => {
      if (event.key === this.key || event.key === null) this.fallBehind();
    });
  }

  open() {
    let raw;
    try { raw = localStorage.getItem(this.key); } catch { return this.warn(OFF); }
    if (raw === null) return;
    const found = this.understood(raw);
    if (found) {
      this.answers = found.answers;
      this.stamp = found.stamp;
      return;
    }
    try {
      localStorage.setItem(`${this.key} set aside ${Date.now()}`, raw);
      localStorage.removeItem(this.key);
      this.warn(DAMAGED);
    } catch { this.fallBehind(OFF); }
  }

  // Everything, or nothing: a text, a count or a mark of another kind makes it damaged.
  understood(raw) {
    let told;
    try { told = JSON.parse(raw); } catch { return null; }
    if (typeof told?.stamp !== "string" || typeof told.answers !== "object") return null;
    const answers = {};
    for (const [id, { parts }] of Object.entries(this.answers)) {
      const one = told.answers?.[id];
      const good = Array.isArray(one?.parts) && one.parts.length === parts.length &&
        one.parts.every((text) => typeof text === "string" && clean(text) === text) &&
        typeof one.sure === "boolean";
      if (!good) return null;
      answers[id] = { parts: [...one.parts], sure: one.sure };
    }
    return { stamp: told.stamp, answers };
  }

  fallBehind(why = TWICE) {
    this.behind = true;
    this.warn(why);
  }

  keep() {
    if (this.behind) return this.warn(TWICE);
    try {
      const raw = localStorage.getItem(this.key);
      const there = raw === null ? null : this.understood(raw)?.stamp;
      if (there !== this.stamp) return this.fallBehind();
      const stamp = `${Date.now()} ${Math.random()}`;
      localStorage.setItem(this.key, JSON.stringify({ stamp, answers: this.answers }));
      this.stamp = stamp;
    } catch { this.warn(OFF); }
  }

  // What was set aside goes, too: nothing that was typed here stays in the browser.
  clear() {
    try {
      for (const key of Object.keys(localStorage))
        if (key === this.key || key.startsWith(`${this.key} set aside `))
          localStorage.removeItem(key);
    } catch { /* there is nothing to clear */ }
  }
}
