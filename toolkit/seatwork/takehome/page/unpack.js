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

// A picture keeps its letters readable on a phone: it is then wider than the page, and is moved
// under the finger or with the arrow keys, one section at a time.
const strip = (parent, name) =>
  make(parent, "div", "", { class: "strip", role: "region", tabindex: "0", "aria-label": name });
