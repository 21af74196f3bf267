// Keys of a form or a bench inside a notebook. Plain keys belong to what has them, not to the
// notebook around it; Ctrl+S and its like do not. Esc leads out to the page, Shift and Enter run
// the cell. Put before the script of a widget (see keys.py).

// `home` tells whether a place is the widget's own; `keeps` whether Esc has something to put back.
function guardKeys(home, keeps = () => false) {
  function hear(event) {
    const { target } = event;
    if (!(target instanceof Element) || !home(target)) return;
    const plain = !(event.ctrlKey || event.metaKey || event.altKey);
    // The notebook asks this attribute of the target alone.
    target.toggleAttribute("data-lm-suppress-shortcuts", plain);
    if (!plain || event.isComposing) return;
    const out = event.key === "Escape" && !keeps(target);
    const run = event.key === "Enter" && event.shiftKey;
    if (!out && !run) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (leaveFor(target) && run) runCell(target);
  }
  window.addEventListener("keydown", hear, true);
  return () => window.removeEventListener("keydown", hear, true);
}

// The focus goes to the cell: what was typed counts, and the notebook's own keys work again.
function leaveFor(target) {
  const cell = target.closest(".jp-Cell");
  document.activeElement?.blur();
  cell?.focus();
  return Boolean(cell);
}

function runCell(target) {
  const told = { key: "Enter", code: "Enter", keyCode: 13, shiftKey: true, bubbles: true,
    cancelable: true, view: window };
  target.closest(".jp-Notebook")?.dispatchEvent(new KeyboardEvent("keydown", told));
}
