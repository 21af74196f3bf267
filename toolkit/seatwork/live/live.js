// The widget round one live picture; `picture.js` stands before it in the same module.

function render({ model, el }) {
  const root = html(el, "div", "seatwork-live");
  const home = html(root, "div", "seatwork-picture");
  const readout = html(root, "div", "seatwork-readout");
  const trouble = html(root, "p", "seatwork-trouble");
  const said = html(root, "p", "seatwork-said");
  for (const region of [trouble, said]) region.setAttribute("role", "status");
  let picture = null;
  let number = 0;
  let timer = 0;
  let text = "";

  function beside(message) {
    read(readout, message);
    if (message.text !== undefined) text = message.text;
    if (message.trouble !== undefined) trouble.textContent = message.trouble;
  }

  function settle() {
    said.textContent = text;
    model.send({ settled: true });
  }

  // Page and layers arrive together, or layers alone when only the sharpness changes.
  let due = false;
  function changed() {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (model.get("page").number !== number) draw();
      else picture.fill(model.get("layers"), new DataView(new ArrayBuffer(0)));
    });
  }

  async function draw() {
    const page = model.get("page");
    if (!page.order) return;
    const next = new Picture(page);
    const old = picture;
    picture = next;
    number = page.number;
    next.follow(page);
    beside(page);
    dress(page);
    await next.fill(model.get("layers"), model.get("pixels"));
    if (picture !== next) return next.close();
    home.replaceChildren(next.svg);
    old?.close();
    look();
  }

  function dress(page) {
    for (const place of [root, root.closest(".seatwork-bench")]) {
      if (!place) continue;
      place.dataset.palette = page.palette;
      place.toggleAttribute("data-projector", page.projector);
    }
  }

  // What the control rows of this bench should show travels with the picture.
  function tell(rows = {}) {
    const bench = root.closest(".seatwork-bench");
    for (const [name, now] of Object.entries(rows))
      bench?.dispatchEvent(new CustomEvent("seatwork-tell", { detail: { name, now } }));
  }

  function hear(message, buffers) {
    beside(message);
    tell(message.tell);
    if (picture && message.number === number) {
      picture.follow(message);
      if (message.pixels) picture.repaint(buffers[0]);
    }
    if (message.quiet) return;
    clearTimeout(timer);
    timer = setTimeout(settle, SETTLED_AFTER);
  }

  let looked = "";
  function look() {
    root.closest(".jp-OutputArea-child")?.classList.add("seatwork-live-output");
    dress(model.get("page"));
    const looks = pageLooks(root, model.get("page").width);
    if (JSON.stringify(looks) === looked) return;
    looked = JSON.stringify(looks);
    model.send({ page: looks });
  }

  const release = guardKeys(
    (place) => place.closest(".seatwork-bench")?.contains(root),
    (place) => place.hasAttribute("data-changed"));
  model.on("change:page", changed);
  model.on("change:layers", changed);
  model.on("msg:custom", hear);
  const sizes = new ResizeObserver(look);
  sizes.observe(home);
  const themes = new MutationObserver(look);
  themes.observe(document.body, { attributeFilter: ["data-jp-theme-light"] });
  window.addEventListener("resize", look);
  draw().then(() => model.send({ hello: true }));
  return () => {
    clearTimeout(timer);
    sizes.disconnect();
    themes.disconnect();
    window.removeEventListener("resize", look);
    release();
    model.off("change:page", changed);
    model.off("change:layers", changed);
    model.off("msg:custom", hear);
    picture?.close();
  };
}

export default { render };
