/** A set of small whole numbers; read only once it is made. All sets of one plan are equally long. */
export type Bits = Uint32Array;

export const emptyBits = (size: number): Bits => new Uint32Array((size + 31) >>> 5);
export const hasBit = (set: Bits, index: number): boolean => (((set[index >>> 5] ?? 0) >>> (index & 31)) & 1) === 1;

/** Adds to a set that is still being made. */
export function addBit(set: Bits, index: number): void {
  set[index >>> 5] = ((set[index >>> 5] ?? 0) | (1 << (index & 31))) >>> 0;
}

/** Adds a whole set to one that is still being made. */
export function addAll(set: Bits, more: Bits): void {
  for (let word = 0; word < set.length; word++) set[word] = ((set[word] ?? 0) | (more[word] ?? 0)) >>> 0;
}

export function bitsOf(size: number, indices: Iterable<number>): Bits {
  const set = emptyBits(size);
  for (const index of indices) addBit(set, index);
  return set;
}

export function union(a: Bits, b: Bits): Bits {
  const made = new Uint32Array(a.length);
  for (let word = 0; word < a.length; word++) made[word] = (a[word] ?? 0) | (b[word] ?? 0);
  return made;
}

export function common(a: Bits, b: Bits): Bits {
  const made = new Uint32Array(a.length);
  for (let word = 0; word < a.length; word++) made[word] = (a[word] ?? 0) & (b[word] ?? 0);
  return made;
}

export function without(a: Bits, b: Bits): Bits {
  const made = new Uint32Array(a.length);
  for (let word = 0; word < a.length; word++) made[word] = (a[word] ?? 0) & ~(b[word] ?? 0);
  return made;
}

export function meets(a: Bits, b: Bits): boolean {
  for (let word = 0; word < a.length; word++) if (((a[word] ?? 0) & (b[word] ?? 0)) !== 0) return true;
  return false;
}

export function isWithin(a: Bits, b: Bits): boolean {
  for (let word = 0; word < a.length; word++) if (((a[word] ?? 0) & ~(b[word] ?? 0)) !== 0) return false;
  return true;
}

export function isEmpty(set: Bits): boolean {
  for (let word = 0; word < set.length; word++) if (set[word] !== 0) return false;
  return true;
}

export function sameBits(a: Bits, b: Bits): boolean {
  for (let word = 0; word < a.length; word++) if (a[word] !== b[word]) return false;
  return true;
}

export function countOf(set: Bits): number {
  let count = 0;
  for (let at = 0; at < set.length; at++) for (let word = set[at] ?? 0; word !== 0; word &= word - 1) count += 1;
  return count;
}

export function indicesOf(set: Bits): number[] {
  const indices: number[] = [];
  for (let at = 0; at < set.length; at++) {
    for (let word = set[at] ?? 0; word !== 0; word &= word - 1) indices.push(at * 32 + 31 - Math.clz32(word & -word));
  }
  return indices;
}

/** Tells sets apart in a table. */
export function keyOf(set: Bits): string {
  let key = '';
  for (let at = 0; at < set.length; at++) {
    const word = set[at] ?? 0;
    key += String.fromCharCode(word & 0xffff, word >>> 16);
  }
  return key;
}
