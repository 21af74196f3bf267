// Which entries nobody could read, whatever is asked: no number, two numbers, a sum, words that are
// no unit. The units and words are those that the reader of entries took when the page was written.
// What is not told here may yet not be read: this never says that an entry is.
const ALIKE = [
  [/[\u2044\u2215]/g, "/"], [/[\u2019\u2032]/g, "'"], [/[\u201c\u201d\u2033]|''/g, '"'],
  [/\u00ba/g, "\u00b0"], [/[\u2212\u2013]/g, "-"], [/[ \u00a0]+/g, " "], [/^ | $/g, ""],
  [/^= ?/, ""], [/ ?[,;]$/, ""]];
const VULGAR = { "\u00bd": "1/2", "\u00bc": "1/4", "\u00be": "3/4", "\u215b": "1/8",
  "\u215c": "3/8", "\u215d": "5/8", "\u215e": "7/8" };
const FRACTION = /^([+-]?)(?:\d+[ -]+)?\d+ ?\/ ?(\d+)/;
const DECIMAL = /^([+-]?)(\d+[.,]?\d*|[.,]\d+)/;
const THOUSAND = /^[1-9]\d{0,2},\d{3}$/; // 1,234 is one thing to some, another to others
const PARTED = [2, 4, 8, 16, 32, 64, 128];
const MOST_SIGNS = 130; // a number is 60 long at most, its unit and its word no longer

// A text as it is looked at: signs that mean the same, fractions of one sign, a word before it.
function plainly(text, before) {
  let plain = text.toLowerCase();
  for (const [sign, other] of ALIKE) plain = plain.replace(sign, other);
  for (const [sign, fraction] of Object.entries(VULGAR))
    plain = plain.replaceAll(new RegExp(`(\\d?)${sign}`, "g"),
      (_, digit) => (digit ? `${digit} ${fraction}` : fraction));
  const word = before.find((one) => plain.startsWith(`${one} `));
  return word ? plain.slice(word.length + 1) : plain;
}

function ends(tail, units, words) {
  const bare = (text) => text.replaceAll(" ", "");
  const found = bare(tail);
  const known = units.map(bare);
  return known.includes(found) || words.map(bare).some((word) =>
    found.endsWith(word) && known.includes(found.slice(0, found.length - word.length)));
}

function noNumber(text, shape) {
  const plain = plainly(text, shape.before);
  const fraction = FRACTION.exec(plain);
  const found = fraction ?? DECIMAL.exec(plain);
  if (!found || plain.length > MOST_SIGNS) return true;
  const [number, sign, digits] = found;
  if (sign === "-" && !shape.sign && /[1-9]/.test(number)) return true;
  if (fraction ? !PARTED.includes(Number(digits)) : THOUSAND.test(digits)) return true;
  const units = fraction ? shape.after_fraction : shape.units;
  return !ends(plain.slice(number.length), units, shape.words);
}

function noOrder(text, count) {
  const letters = [...text.toLowerCase()].filter((sign) => /[a-z0-9]/.test(sign)).sort().join("");
  return letters !== "abcdefghij".slice(0, count);
}

// Whether an entry cannot be read for sure; an empty one is left alone.
function unreadable(text, part, shapes) {
  if (!text) return false;
  if (part.kind === "number") return noNumber(text, shapes[`${part.measure} ${part.system}`]);
  return part.kind === "order" && noOrder(text, part.count);
}
