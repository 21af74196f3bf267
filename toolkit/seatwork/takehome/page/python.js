// Python in the page. All of it lies in this file: it is unpacked and started in a worker. No
// request is made: the policy forbids it, and the worker's fetch knows two names.
const INSIDE = "https://inside.invalid/";

// A worker made in a page that was opened from a file is a plain script; a module is refused
// there. The runtime finds out by trying importScripts, and needs no other part of it.
const NOTHING_FETCHED = "self.importScripts = () => { throw new Error('nothing is fetched'); };\n";

const WORK = `
async function start(parts) {
  const home = ${JSON.stringify(INSIDE)};
  const held = {
    [home + "pyodide.asm.wasm"]: ["application/wasm", parts.wasm],
    [home + "python_stdlib.zip"]: ["application/zip", parts.std],
  };
  globalThis.fetch = async (url) => {
    const found = held[String(url)];
    if (!found) throw new TypeError("this page asks for nothing: " + url);
    return new Response(found[1], { headers: { "Content-Type": found[0] } });
  };
  const python = await loadPyodide({
    indexURL: home,
    packageBaseUrl: home,
    createPyodideModule: _createPyodideModule,
    lockFileContents: { info: parts.about, packages: {} },
    env: { HOME: "/app", PYTHONHASHSEED: "0" },
  });
  const begun = performance.now();
  const bytes = parts.app;
  const long = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  const index = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + long)));
  let at = 4 + long;
  const made = new Set();
  for (const [name, size] of index) {
    const folder = "/app/" + name.slice(0, name.lastIndexOf("/"));
    if (!made.has(folder)) python.FS.mkdirTree(folder);
    made.add(folder);
    python.FS.writeFile("/app/" + name, bytes.subarray(at, at + size), { canOwn: true });
    at += size;
  }
  python.runPython('import gc, sys; gc.disable(); sys.path.insert(0, "/app")');
  const inside = python.pyimport(parts.entry);
  python.runPython("gc.enable()");
  return { python, begun, call: (name, given) => JSON.parse(inside.call(name, JSON.stringify(given))) };
}
let inside;
onmessage = async ({ data }) => {
  try {
    if (data.parts) {
      inside = await start(data.parts);
      postMessage({ id: 0, gave: { bare: inside.begun } });
    } else postMessage({ id: data.id, gave: inside.call(data.name, data.given) });
  } catch (error) { postMessage({ id: data.id ?? 0, fault: String(error).slice(-2000) }); }
};`;

// Where the runtime is a file beside the page, that file fills the empty blocks.
const NOT_BESIDE = "the file seatwork-python.js is not beside the page";

// Returns why Python did not start, in both languages: as the page says it, or the missing file.
function whyNot(error, english, spanish) {
  if (!String(error).includes(NOT_BESIDE)) return [english, spanish];
  return [
    "The file seatwork-python.js that was written with this page must lie in the same folder. " +
    "It is not there, or it is another. Put it there and open this page again.",
    "El archivo seatwork-python.js que se escribió con esta página debe estar en la misma " +
    "carpeta. No está, o es otro. Póngalo allí y abra esta página otra vez.",
  ];
}

// Returns a function that asks Python; rejects where it cannot start.
async function startPython(entry) {
  if (!document.getElementById("py-wasm").textContent) throw new Error(NOT_BESIDE);
  const names = ["py-loader", "py-asm", "py-wasm", "py-std", "py-app", "py-about"];
  const [loader, asm, wasm, std, app, about] = await Promise.all(names.map(unpack));
  for (const name of names) document.getElementById(name).remove();
  const code = new Blob([NOTHING_FETCHED, loader, asm, WORK], { type: "text/javascript" });
  const worker = new Worker(URL.createObjectURL(code));
  const waiting = new Map();
  let number = 0;
  const ask = (message, given = []) => new Promise((give, fail) => {
    waiting.set(message.id, [give, fail]);
    worker.postMessage(message, given);
  });
  worker.onerror = (event) => {
    for (const [, fail] of waiting.values()) fail(new Error(event.message || "no worker"));
  };
  worker.onmessage = ({ data }) => {
    const [give, fail] = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.fault === undefined) give(data.gave);
    else fail(new Error(data.fault));
  };
  const parts = { wasm, std, app, entry, about: JSON.parse(new TextDecoder().decode(about)) };
  const { bare } = await ask({ id: 0, parts }, [wasm.buffer, std.buffer, app.buffer]);
  const call = (name, given) => ask({ id: ++number, name, given });
  return Object.assign(call, { bare });
}
