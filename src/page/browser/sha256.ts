const ROUNDS = 64;

/** The first 32 bits of the fractional parts of the roots of the first primes (FIPS 180-4, sections 4.2.2 and 5.3.3). */
function fractions(root: number, count: number): number[] {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate += 1) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return primes.map((prime) => {
    const power = prime ** (1 / root);
    return Math.floor((power - Math.floor(power)) * 2 ** 32) | 0;
  });
}

const rotated = (word: number, by: number): number => (word >>> by) | (word << (32 - by));
const at = (words: ArrayLike<number>, index: number): number => words[index] ?? 0;

/** SHA-256 of a text's UTF-8 bytes in hexadecimal, as FIPS 180-4 has it. For browsers, which keep theirs from plain http pages. */
export function sha256(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const blocks = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  blocks.set(bytes);
  blocks[bytes.length] = 0x80;
  const view = new DataView(blocks.buffer);
  view.setUint32(blocks.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(blocks.length - 4, (bytes.length * 8) >>> 0);
  const constants = fractions(3, ROUNDS);
  let state = fractions(2, 8);
  for (let start = 0; start < blocks.length; start += 64) state = afterBlock(state, scheduleOf(view, start), constants);
  return state.map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

function scheduleOf(view: DataView, start: number): Int32Array {
  const words = new Int32Array(ROUNDS);
  for (let index = 0; index < 16; index += 1) words[index] = view.getInt32(start + 4 * index);
  for (let index = 16; index < ROUNDS; index += 1) {
    const [near, far] = [at(words, index - 2), at(words, index - 15)];
    const one = rotated(near, 17) ^ rotated(near, 19) ^ (near >>> 10);
    const nought = rotated(far, 7) ^ rotated(far, 18) ^ (far >>> 3);
    words[index] = at(words, index - 16) + nought + at(words, index - 7) + one;
  }
  return words;
}

function afterBlock(before: readonly number[], words: Int32Array, constants: readonly number[]): number[] {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = before;
  for (let round = 0; round < ROUNDS; round += 1) {
    const one = rotated(e, 6) ^ rotated(e, 11) ^ rotated(e, 25);
    const first = (h + one + ((e & f) ^ (~e & g)) + at(constants, round) + at(words, round)) | 0;
    const nought = rotated(a, 2) ^ rotated(a, 13) ^ rotated(a, 22);
    const second = (nought + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  return [a, b, c, d, e, f, g, h].map((word, index) => (word + at(before, index)) | 0);
}

/** The part of `node:crypto` that the rooms use, for the bundle. */
export function createHash(_algorithm: 'sha256'): { update(text: string): ReturnType<typeof createHash>; digest(encoding: 'hex'): string } {
  const pieces: string[] = [];
  const hash = { update: (text: string) => { pieces.push(text); return hash; }, digest: () => sha256(pieces.join('')) };
  return hash;
}
