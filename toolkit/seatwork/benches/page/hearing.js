// A button that asks before anything can sound; then a player, quiet, that waits to be started.

const QUIET = 0.15;

function html(parent, tag, text = "") {
  const element = document.createElement(tag);
  element.textContent = text;
  parent.append(element);
  return element;
}

function button(parent, text) {
  const element = html(parent, "button", text);
  element.className = "jupyter-button";
  return element;
}

function render({ model, el }) {
  const root = html(el, "div");
  root.className = "seatwork-hearing";
  const hear = button(root, "Hear this cut");
  const ask = html(root, "span");
  ask.hidden = true;
  html(ask, "span", "A shrill tone may come. Turn your volume down first. ");
  const yes = button(ask, "Make the sound");
  html(ask, "span", " ");
  const no = button(ask, "No sound");
  const player = html(root, "div");
  player.setAttribute("role", "status");
  let address = "";

  function asking(on) {
    ask.hidden = !on;
    hear.hidden = on;
    (on ? no : hear).focus();
  }

  function clear() {
    if (address) URL.revokeObjectURL(address);
    address = "";
    player.replaceChildren();
  }

  function show() {
    clear();
    const wav = model.get("wav");
    if (!wav || !wav.byteLength) return;
    const bytes = new Uint8Array(wav.buffer, wav.byteOffset, wav.byteLength).slice();
    address = URL.createObjectURL(new Blob([bytes], { type: "audio/wav" }));
    html(player, "span", `${model.get("caption")} `);
    const audio = html(player, "audio");
    audio.controls = true;
    audio.volume = QUIET;
    audio.setAttribute("aria-label", "The cut as a sound");
    audio.src = address;
  }

  hear.addEventListener("click", () => asking(true));
  no.addEventListener("click", () => asking(false));
  yes.addEventListener("click", () => {
    asking(false);
    model.send({ wanted: true });
  });
  model.on("change:wav", show);
  show();
  return () => {
    model.off("change:wav", show);
    clear();
  };
}

export default { render };
