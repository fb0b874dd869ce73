import type { Mesh } from '../../model/index.ts';
import type { PackedMesh } from '../data.ts';

/** Greatest count of 16 bit. A part of 2 m is thus told to 0.03 mm. */
const MOST = 65535;

/** A mesh in small whole numbers. Throws where it has more corners than 16 bit can number. */
export function packMesh({ positions, triangles }: Mesh): PackedMesh {
  if (positions.length / 3 > MOST) throw new RangeError(`a mesh of ${positions.length / 3} corners; the guide holds at most ${MOST}`);
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, index) => {
    const axis = index % 3;
    least[axis] = Math.min(least[axis] ?? value, value);
    most[axis] = Math.max(most[axis] ?? value, value);
  });
  const begin = least.map((value) => Math.floor(value * 1000) / 1000);
  const reach = Math.max(...most.map((value, axis) => value - (begin[axis] ?? 0)));
  const step = Math.ceil((reach / MOST) * 1e6) / 1e6;
  const counts = Array.from(positions, (value, index) => Math.round((value - (begin[index % 3] ?? 0)) / step));
  return { least: begin, step, corners: base64(counts), triangles: base64([...triangles]) };
}

function base64(numbers: readonly number[]): string {
  const bytes = Buffer.alloc(2 * numbers.length);
  numbers.forEach((number, index) => bytes.writeUInt16LE(number, 2 * index));
  return bytes.toString('base64');
}
