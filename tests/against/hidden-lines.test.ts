// Visible lines against the exact hidden-line removal of a geometry kernel (Open CASCADE, HLRBRep_Algo, as built in
// replicad-opencascadejs): blocks that do not touch, so that both draw the same edges.
import { describe, expect, it } from 'vitest';
import { lineDrawing, newLineCaches } from '../../src/draw/lines/index.ts';
import { at, body, cube } from '../draw/lines/solids.ts';
import { drawnLength, fromFront, isometric, scatteredViews } from '../draw/lines/views.ts';
import { exactKernel, exactVisibleLength, shelvesOfBlocks } from '../support/exact-lines.ts';

const kernel = await exactKernel();
const blocks = shelvesOfBlocks(5);
const bodies = blocks.map(({ sides, middle }, index) => body(`block ${index}`, cube(...sides), at(...middle)));

describe('89 blocks: as much line is seen as the exact kernel finds', () => {
  const views = { isometric, 'from the front': fromFront, ...Object.fromEntries(scatteredViews(5).map((view, k) => [`scattered ${k}`, view])) };
  it.each(Object.entries(views))('%s', (_, view) => {
    const drawing = lineDrawing(bodies, view, { caches: newLineCaches() });
    const [ours, exact] = [drawnLength(drawing, 'outline') + drawnLength(drawing, 'edge'), exactVisibleLength(kernel, blocks, view.towardsEye)];
    expect(exact).toBeGreaterThan(10_000);
    expect(Math.abs(ours / exact - 1), `${ours} mm against ${exact} mm`).toBeLessThan(5e-5);
  });
});
