/** Euler's buckling load, N: π² E I / (K L)², K = 1 hinged at both ends, K = 2 free at one end. */
export const eulerLoad = (modulus: number, second: number, length: number, lengthFactor: number): number =>
  (Math.PI ** 2 * modulus * second) / (lengthFactor * length) ** 2;
