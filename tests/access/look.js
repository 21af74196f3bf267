// What is asked of a page: its parts, what can be pressed there, where the focus stands, what is
// cut off. Read only; nothing here changes a page but where the focus is.

globalThis.accessLook = (() => {
  const CONTROL = "a[href], button, input, select, textarea, summary, [tabindex]";
  const WIDE = "table, pre, svg, img, .strip, .seatwork-picture, .player-picture, mjx-container";
  const LEAST_OUTLINE = 2; // px
  const LEAST_CONTRAST = 3; // of an outline, WCAG 2.2, 1.4.11
  let parts = [];
  let part = null;
  let expected = [];

  const shown = (one) =>
    one.checkVisibility({ visibilityProperty: true }) && one.getClientRects().length > 0;
  const hidden = (one) => getComputedStyle(one).clipPath === "inset(50%)";
  const mayPress = (one) => shown(one) && !one.disabled && one.tabIndex >= 0;

  // Of the radio buttons of one name, Tab reaches the chosen one, or the first.
  function stands(one, all) {
    if (one.type !== "radio") return true;
    const group = all.filter((other) => other.type === "radio" && other.name === one.name);
    return one === (group.find((other) => other.checked) ?? group[0]);
  }

  function stops(home) {
    const all = [...home.querySelectorAll(CONTROL)].filter(mayPress);
    return all.filter((one) => stands(one, all));
  }

  function find(selector) {
    const all = [...document.querySelectorAll(selector)].filter(shown);
    parts = all.filter((one) => !all.some((other) => other !== one && other.contains(one)));
    return parts.length;
  }

  function begin(number) {
    part = parts[number];
    expected = stops(part);
    expected[0]?.focus();
    return expected.length;
  }

  // ---------------------------------------------------------------- colors

  function rgba(text) {
    const [r, g, b, a = 1] = text.match(/[\d.]+/g).map(Number);
    return [r, g, b, a];
  }

  function luminance([r, g, b]) {
    const linear = [r, g, b].map((c) => c / 255)
      .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  function contrast(one, other) {
    const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a);
    return (high + 0.05) / (low + 0.05);
  }

  function ground(one) {
    for (let at = one.parentElement; at; at = at.parentElement) {
      const color = rgba(getComputedStyle(at).backgroundColor);
      if (color[3] > 0.99) return color;
    }
    return rgba(getComputedStyle(document.documentElement).colorScheme === "dark" ?
      "rgb(0,0,0)" : "rgb(255,255,255)");
  }

  // ---------------------------------------------------------------- focus

  function outlined(one) {
    const look = getComputedStyle(one);
    if (look.outlineStyle === "auto") return true; // the browser's own ring
    return look.outlineStyle !== "none" && parseFloat(look.outlineWidth) >= LEAST_OUTLINE &&
      contrast(rgba(look.outlineColor), ground(one)) >= LEAST_CONTRAST;
  }

  const over = (one, x, y) => {
    const top = document.elementFromPoint(x, y);
    return top !== null && (one.contains(top) || top.contains(one));
  };

  // Not hidden by anything: the middle and two inner corners are its own.
  function uncovered(one) {
    if (hidden(one)) return one !== document.activeElement; // shown when the focus comes
    const box = [...one.getClientRects()].find((each) => each.width > 1) ??
      one.getBoundingClientRect();
    const places = [[0.5, 0.5], [0.1, 0.1], [0.9, 0.9]];
    return places.some(([x, y]) => over(one, box.left + x * box.width, box.top + y * box.height));
  }

  function told(one) {
    const words = one.getAttribute("aria-label") || one.labels?.[0]?.textContent ||
      one.textContent || one.getAttribute("placeholder") || one.title || "";
    return `${one.tagName.toLowerCase()}${one.type ? `[${one.type}]` : ""} ` +
      `"${words.trim().replace(/\s+/g, " ").slice(0, 50)}"`;
  }

  // Where the focus is: its number among the stops, -1 where it is elsewhere in the part.
  function here() {
    const one = document.activeElement;
    if (!one || !part.contains(one) || one === part) return null;
    const box = one.getBoundingClientRect();
    return {
      number: expected.indexOf(one), told: told(one), seen: outlined(one), free: uncovered(one),
      left: box.left + scrollX, right: box.right + scrollX,
      top: box.top, bottom: box.bottom,
      page: one.closest(".jp-Cell")?.getBoundingClientRect().top ?? -scrollY,
    };
  }

  const missed = (numbers) =>
    expected.filter((one, n) => !numbers.includes(n)).map(told);

  function outlines() {
    const bad = [];
    for (const one of parts.flatMap(stops)) {
      one.focus();
      if (document.activeElement === one && !outlined(one)) bad.push(told(one));
    }
    return bad;
  }

  // ---------------------------------------------------------------- room

  const text = (one) => [...one.childNodes].some((n) => n.nodeType === 3 && n.data.trim());

  function cut() {
    const wide = document.documentElement.clientWidth + 1;
    const faults = [];
    for (const home of parts)
      for (const one of [home, ...home.querySelectorAll("*")]) {
        if (!shown(one) || one.closest("svg, mjx-container") || hidden(one)) continue;
        if (one.matches("input")) continue; // what is typed scrolls in its box
        if (one.parentElement?.closest(".seatwork-said, .seatwork-hidden, .player-said")) continue;
        const look = getComputedStyle(one);
        const clips = (flow) => flow === "hidden" || flow === "clip";
        if (clips(look.overflowX) && one.scrollWidth > one.clientWidth + 2 && one.clientWidth > 1)
          faults.push(`cut at the side: ${told(one)}`);
        if (clips(look.overflowY) && one.scrollHeight > one.clientHeight + 2 && one.clientHeight > 1)
          faults.push(`cut below: ${told(one)}`);
        const reads = text(one) || one.matches(CONTROL);
        if (reads && !one.closest(WIDE) && one.getBoundingClientRect().right > wide)
          faults.push(`stands out of the page: ${told(one)}`);
      }
    return faults;
  }

  function covered() {
    const bad = [];
    for (const one of parts.flatMap(stops)) {
      one.scrollIntoView({ block: "center", inline: "nearest" });
      if (!uncovered(one)) bad.push(told(one));
    }
    return bad;
  }

  // ---------------------------------------------------------------- forced colors, size

  const NATIVE = "input:is([type=checkbox], [type=radio], [type=range]), summary, [tabindex]:not(button)";

  // Where colors are taken away, an edge or a line must still say that this can be pressed.
  function bare() {
    return parts.flatMap(stops).filter((one) => !one.matches(NATIVE) && !hidden(one)).filter((one) => {
      const look = getComputedStyle(one);
      const edge = look.borderStyle !== "none" && parseFloat(look.borderTopWidth) > 0;
      const line = look.textDecorationLine.includes("underline");
      const link = one.tagName === "A"; // forced to the color of links
      return !(edge || line || link);
    }).map(told);
  }

  const controls = () =>
    parts.flatMap((home) => [...home.querySelectorAll(
      "button, input, select, textarea, summary, a[href], img, svg[role=img], [role=slider]")])
      .filter((one) => shown(one));

  // Motion that begins in our parts, counted from the first call.
  let motions = [];
  function watchMotion() {
    motions = [];
    for (const kind of ["transitionrun", "animationstart"])
      document.addEventListener(kind, ({ target, propertyName }) => {
        if (parts.some((home) => home.contains(target)))
          motions.push(`${propertyName ?? kind} of ${told(target)}`);
      }, true);
  }

  function moving() {
    const still = document.getAnimations().map((one) => one.effect?.target)
      .filter((target) => target && parts.some((home) => home.contains(target)));
    return [...motions, ...still.map((target) => `moves on and on: ${told(target)}`)];
  }

  const list = () => (globalThis.accessControls = controls()).length;
  return { find, begin, here, missed, outlines, cut, covered, bare, list, watchMotion,
    told: (n) => told(globalThis.accessControls[n]), motions: moving };
})();
