// Blocks of the page: packed data in letters that no page reads as markup.

function packed(id) {
  const text = document.getElementById(id).textContent.trim();
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
}

async function unpack(id) {
  const stream = new Blob([packed(id)]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

const unpackData = async (id) => JSON.parse(new TextDecoder().decode(await unpack(id)));
const unbase = (text) => Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));

function make(parent, tag, text = "", attributes = {}) {
  const node = document.createElement(tag);
  node.textContent = text;
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  parent.append(node);
  return node;
}

// A picture is shown whole, as wide as the page. Where its letters come out too small, on a phone,
// a button shows it larger: it is then moved under the finger or with the arrow keys, one section
// at a time.
const LEAST_LETTERS = 11; // px
const strip = (parent, name) =>
  make(parent, "div", "", { class: "strip", role: "region", tabindex: "0", "aria-label": name });

// `letters` is how high the picture's letters are now [px]; `fill` writes on the button.
function larger(place, letters, fill) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "larger";
  place.after(button);
  const look = () => {
    const wide = place.classList.contains("wide");
    button.hidden = !wide && !(letters() < LEAST_LETTERS);
    fill(button, wide);
  };
  button.addEventListener("click", () => {
    place.classList.toggle("wide");
    look();
  });
  new ResizeObserver(look).observe(place);
  look();
}

// A drawing of a question, with the size of its letters beside its width [px].
const LETTERS = 17.5;
function drawing(place, picture, alt, fill) {
  const image = make(place, "img", "", { src: `data:image/png;base64,${picture}`, alt });
  const now = () => (LETTERS * image.clientWidth) / image.naturalWidth;
  image.decode().catch(() => {}).then(() => larger(place, now, fill));
  return image;
}
