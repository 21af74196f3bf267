// A page's texts stand there in English and in Spanish; the language of the page says which is seen.
const chosen = () => document.documentElement.lang;
const say = (english, spanish) => (chosen() === "es" ? spanish : english);
const LARGER = ["Larger picture", "Dibujo más grande"];
const WHOLE = ["Whole picture", "Dibujo entero"];
const named = new Set(); // what changes an attribute with the language

function tell(place, english, spanish = english) {
  place.replaceChildren();
  if (english === spanish) {
    place.textContent = english;
    return place;
  }
  for (const [lang, text] of [["en", english], ["es", spanish]])
    make(place, "span", text, { lang, class: "say" });
  return place;
}

const both = (parent, tag, english, spanish, attributes = {}) =>
  tell(make(parent, tag, "", attributes), english, spanish);

// A name that is only heard.
function name(place, english, spanish) {
  const now = () => place.setAttribute("aria-label", say(english, spanish));
  named.add(now);
  now();
  return place;
}

// A picture has its words, and what it shows in words, in the language of the page.
function follow(image, { picture, spoken = picture, alt }, spanish) {
  const now = () => {
    image.src = `data:image/png;base64,${say(picture, spoken)}`;
    image.alt = say(alt, spanish);
  };
  named.add(now);
  now();
}

function languages(changed = () => {}) {
  const buttons = [...document.querySelectorAll(".languages button")];
  const show = (lang) => {
    document.documentElement.lang = lang;
    for (const one of buttons) one.setAttribute("aria-pressed", String(one.lang === lang));
    for (const now of named) now();
    changed(lang);
  };
  for (const one of buttons) one.addEventListener("click", () => show(one.lang));
}
