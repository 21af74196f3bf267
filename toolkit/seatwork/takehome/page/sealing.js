// The seal of an answer file: HMAC with SHA-256 (FIPS 198-1, FIPS 180-4) over its JSON with sorted
// names. A browser's own SHA-256 is there on secure addresses alone, and a plain web folder is none.
const BEGUN = [
  0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];
const ROUNDS = [
  0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
  0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
  0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
  0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
  0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
  0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
  0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
  0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2];
const BLOCK = 64; // bytes
const right = (word, by) => (word >>> by) | (word << (32 - by));

// One block of 64 bytes mixed into the state of eight words.
function mix(state, words) {
  for (let n = 16; n < 64; n++) {
    const [a, b] = [words[n - 15], words[n - 2]];
    const low = right(a, 7) ^ right(a, 18) ^ (a >>> 3);
    const high = right(b, 17) ^ right(b, 19) ^ (b >>> 10);
    words[n] = words[n - 16] + low + words[n - 7] + high;
  }
  let [a, b, c, d, e, f, g, h] = state;
  for (let n = 0; n < 64; n++) {
    const turned = right(e, 6) ^ right(e, 11) ^ right(e, 25);
    const first = h + turned + ((e & f) ^ (~e & g)) + ROUNDS[n] + words[n];
    const second = (right(a, 2) ^ right(a, 13) ^ right(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, n) => { state[n] += word; });
}

function sha256(bytes) {
  const padded = new Uint8Array(Math.ceil((bytes.length + 9) / BLOCK) * BLOCK);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 4, bytes.length * 8);
  const state = Uint32Array.from(BEGUN);
  const words = new Uint32Array(64);
  for (let at = 0; at < padded.length; at += BLOCK) {
    for (let n = 0; n < 16; n++) words[n] = view.getUint32(at + 4 * n);
    mix(state, words);
  }
  const found = new DataView(new ArrayBuffer(32));
  state.forEach((word, n) => found.setUint32(4 * n, word));
  return new Uint8Array(found.buffer);
}

// A key of at most 64 bytes.
function keyed(key, bytes) {
  const pad = (sign, rest) => {
    const whole = new Uint8Array(BLOCK + rest.length).fill(sign, 0, BLOCK);
    key.forEach((byte, n) => { whole[n] ^= byte; });
    whole.set(rest, BLOCK);
    return sha256(whole);
  };
  return pad(0x5c, pad(0x36, bytes));
}

const sorted = (value) => {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.keys(value).sort().map((name) => [name, sorted(value[name])]));
};

const inHex = (bytes) => [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
const ofHex = (text) => Uint8Array.from(text.match(/../g), (two) => parseInt(two, 16));

// 64 hex digits; `said` is what the file says without its seal, `secret` the form's own in hex.
const sealOf = (said, secret) =>
  inHex(keyed(ofHex(secret), new TextEncoder().encode(JSON.stringify(sorted(said)))));
