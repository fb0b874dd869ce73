import type { PackedMesh } from '../../data.ts';

/** A mesh in mm, three numbers a corner, three corners a triangle. */
export interface Mesh {
  readonly corners: Float32Array;
  readonly triangles: Uint16Array;
}

export function unpackMesh({ least, step, corners, triangles }: PackedMesh): Mesh {
  return {
    corners: Float32Array.from(numbersOf(corners), (count, index) => (least[index % 3] || 0) + count * step),
    triangles: numbersOf(triangles),
  };
}

/** 16 bit numbers, low byte first on any phone. */
function numbersOf(base64: string): Uint16Array {
  const bytes = atob(base64);
  const numbers = new Uint16Array(bytes.length / 2);
  for (let index = 0; index < numbers.length; index++) numbers[index] = bytes.charCodeAt(2 * index) | (bytes.charCodeAt(2 * index + 1) << 8);
  return numbers;
}
