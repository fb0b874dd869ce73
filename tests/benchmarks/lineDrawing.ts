/** Prints the processor time of line drawings: `npx tsx tests/benchmarks/lineDrawing.ts [decks] [sides]`. */
import { lineDrawing, newLineCaches } from '../../src/draw/lines/index.ts';
import { testRack } from '../draw/lines/testRack.ts';
import { fromFront, isometric, towards } from '../draw/lines/views.ts';

const [decks = 7, sides = 18] = process.argv.slice(2).map(Number);
const rack = testRack(decks, sides);
const triangles = rack.reduce((sum, { mesh }) => sum + mesh.triangles.length / 3, 0);
console.log(`${rack.length} bodies, ${triangles} triangles`);
const caches = newLineCaches();
const views = { isometric, aslant: towards(0.5, -1, 0.35), 'from below': towards(0.4, -1, -0.6), 'from the front': fromFront };
for (const [name, view] of Object.entries(views)) {
  const times = Array.from({ length: 7 }, () => {
    const before = process.cpuUsage();
    lineDrawing(rack, view, { caches });
    const { user, system } = process.cpuUsage(before);
    return Math.round((user + system) / 1000);
  });
  console.log(`${name}: first ${times[0]} ms, then ${Math.min(...times.slice(1))}–${Math.max(...times.slice(1))} ms`);
}
