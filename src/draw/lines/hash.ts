/** A place among `size` (a power of two) for a pair of whole numbers. */
export function hashOf(one: number, other: number, size: number): number {
  const mixed = Math.imul(one, 0x9e3779b1) ^ Math.imul(other, 0x85ebca77);
  return (mixed ^ (mixed >>> 15)) & (size - 1);
}
