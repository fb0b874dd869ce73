import { fileURLToPath } from 'node:url';
import { lineDrawing, newLineCaches } from '../../src/draw/lines/index.ts';
import { buildModel, loadSolids } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { filesOnDisk, readItem } from '../../src/read/index.ts';
import { finishedScene } from '../../src/scene/index.ts';
import { testRack } from '../draw/lines/testRack.ts';
import { isometric } from '../draw/lines/views.ts';
import type { Body } from '../../src/draw/types.ts';
import type { Row } from './rows.ts';
import { exactKernel, exactVisibleLength, shelvesOfBlocks } from '../support/exact-lines.ts';
import { at, body, cube } from '../draw/lines/solids.ts';
import { threeDrawer } from './three-svg.ts';

/** Processor time of what is done once, in seconds. */
async function timed(work: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

const best = async (runs: number, work: () => unknown): Promise<number> => {
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) times.push(await timed(work));
  return Math.min(...times);
};

/** Planning with proof, line pictures, their growth, and three's renderer on the same bodies; all in this process, as processor time. */
export async function drawingRows(): Promise<readonly Row[]> {
  const item = readItem(filesOnDisk(fileURLToPath(new URL('../..', import.meta.url))), 'steps/rack/item.yaml');
  const model = buildModel(item, 'standard');
  const planning = await best(2, async () => planItem(model, item.order, await loadSolids()));
  const scene = finishedScene(model, await loadSolids());
  const caches = newLineCaches();
  const draw = (bodies: readonly Body[]): unknown => lineDrawing(bodies, scene.view, { caches });
  const first = await timed(() => draw(scene.bodies));
  const next = await best(5, () => draw(scene.bodies));
  const three = await best(3, threeDrawer(scene.bodies));
  return [
    { work: 'standard rack planned with proof, processor', figure: planning, unit: 's', goal: 1 },
    { work: `full-rack line picture, ${scene.bodies.length} bodies, ${triangles(scene.bodies)} triangles, first`, figure: first * 1000, unit: 'ms', goal: 60 },
    { work: 'the same again, as for the next step', figure: next * 1000, unit: 'ms', goal: 30 },
    { work: 'three’s SVG renderer, the same bodies (nothing hidden exactly)', figure: three * 1000, unit: 'ms', goal: null },
    { work: 'ours over three’s', figure: next / three, unit: '×', goal: null },
    await growth(),
    ...(await besideExact()),
  ];
}

const triangles = (bodies: readonly Body[]): number => bodies.reduce((sum, { mesh }) => sum + mesh.triangles.length / 3, 0);

/** Time for 16 times the triangles over what n log n would take: at most 1 is no worse. */
async function growth(): Promise<Row> {
  const [small, large] = [testRack(2, 12), testRack(32, 12)];
  const [few, many] = [triangles(small), triangles(large)];
  const time = async (bodies: readonly Body[]): Promise<number> => {
    const caches = newLineCaches();
    return best(3, () => lineDrawing(bodies, isometric, { caches }));
  };
  const ratio = (await time(large)) / (await time(small));
  return { work: `growth from ${few} to ${many} triangles, over n log n`, figure: ratio / ((many * Math.log(many)) / (few * Math.log(few))), unit: '×', goal: 1 };
}

/** Blocks that do not touch, drawn by ours from their meshes and by an exact kernel (Open CASCADE, HLRBRep_Algo) from their faces. */
async function besideExact(): Promise<readonly Row[]> {
  const kernel = await exactKernel();
  const blocks = shelvesOfBlocks(20);
  const bodies = blocks.map(({ sides, middle }, index) => body(`block ${index}`, cube(...sides), at(...middle)));
  const exact = await best(3, () => exactVisibleLength(kernel, blocks, isometric.towardsEye));
  const ours = await best(3, () => lineDrawing(bodies, isometric, { caches: newLineCaches() }));
  return [
    { work: `an exact hidden-line kernel, ${blocks.length} blocks`, figure: exact * 1000, unit: 'ms', goal: null },
    { work: 'ours, the same blocks, nothing kept', figure: ours * 1000, unit: 'ms', goal: null },
  ];
}
