/** Bits sorted by in one pass, and how many values they have. */
const passBits = 11;
const slots = 1 << passBits;

/**
 * Places of numbers from the greatest to the least; among equal numbers the earlier place first.
 * A radix sort on the bits of the numbers as floating point, least bits first (IEEE 754 numbers of one sign are in the
 * order of their bits): several times as fast as a sort that compares.
 */
export function greatestFirst(values: Float64Array): Int32Array {
  const count = values.length;
  const bits = new Uint32Array(values.buffer, values.byteOffset, 2 * count);
  const [low, high] = [new Uint32Array(count), new Uint32Array(count)];
  for (let i = 0; i < count; i++) {
    const top = bits[2 * i + 1] as number;
    // Greatest first: what is positive is turned round, what is negative already runs that way. −0 counts as 0.
    const isNegative = top >= 0x80000000 && (values[i] as number) !== 0;
    low[i] = isNegative ? bits[2 * i] as number : ~(bits[2 * i] as number);
    high[i] = isNegative ? top : ~(top & 0x7fffffff) & 0x7fffffff;
  }
  let order = Int32Array.from({ length: count }, (_, i) => i);
  let spare = new Int32Array(count);
  for (const word of [low, high]) {
    for (let shift = 0; shift < 32; shift += passBits) {
      pass(word, shift, order, spare);
      [order, spare] = [spare, order];
    }
  }
  return order;
}

/** Sorts places by some bits of their words, keeping the order of those alike. */
function pass(word: Uint32Array, shift: number, order: Int32Array, sorted: Int32Array): void {
  const starts = new Int32Array(slots + 1);
  for (let i = 0; i < order.length; i++) {
    const slot = slotOf(word, order[i] as number, shift);
    starts[slot + 1] = (starts[slot + 1] as number) + 1;
  }
  for (let slot = 0; slot < slots; slot++) starts[slot + 1] = (starts[slot + 1] as number) + (starts[slot] as number);
  for (let i = 0; i < order.length; i++) {
    const place = order[i] as number;
    const slot = slotOf(word, place, shift);
    const at = starts[slot] as number;
    sorted[at] = place;
    starts[slot] = at + 1;
  }
}

const slotOf = (word: Uint32Array, place: number, shift: number): number => ((word[place] as number) >>> shift) & (slots - 1);
