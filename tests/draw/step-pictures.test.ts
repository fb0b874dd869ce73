import { beforeAll, describe, expect, it } from 'vitest';
import { planTubes } from '../../src/cut/index.ts';
import { lineDrawing, newLineCaches, stepPictures, type Box, type Picture } from '../../src/draw/index.ts';
import { buildModel, loadSolids, type Solids } from '../../src/model/index.ts';
import { planItem, type Step } from '../../src/plan/index.ts';
import { filesOnDisk, readItem } from '../../src/read/index.ts';

/** Least share of a new part's own outline that a picture must show, our default: no source gives one. */
const LEAST_SHARE = 0.15;
/** A part that the main picture hides is shown nearly whole in a further one. */
const CLOSE_UP_SHARE = 0.5;

const item = readItem(filesOnDisk('.'), 'steps/rack/item.yaml');
let solids: Solids;
beforeAll(async () => { solids = await loadSolids(); });

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - 1e-6 && b.x < a.x + a.width - 1e-6 && a.y < b.y + b.height - 1e-6 && b.y < a.y + a.height - 1e-6;

function labelFaults(picture: Picture): string[] {
  const { labels, width, height, id } = picture;
  const outside = labels.filter((box) => box.x < 0 || box.y < 0 || box.x + box.width > width || box.y + box.height > height);
  const clashes = labels.flatMap((a, index) => labels.slice(index + 1).filter((b) => overlap(a, b)).map(() => `${id}: two labels overlap`));
  return [...outside.map(() => `${id}: a label leaves the picture`), ...clashes];
}

/** New parts that no picture of the step shows well enough. */
function hiddenParts(step: Step, pictures: readonly Picture[]): string[] {
  const best = (id: string): number => Math.max(0, ...pictures.map((picture) => picture.newPartShares[id] ?? 0));
  return step.newParts.flatMap(({ kind, ids }) => {
    const shownElsewhere = ids.some((id) => pictures.slice(1).some((picture) => (picture.newPartShares[id] ?? 0) >= CLOSE_UP_SHARE));
    return ids.filter((id) => best(id) < LEAST_SHARE && !shownElsewhere).map((id) => `${step.number} ${step.key}: ${kind} ${id} shows ${best(id).toFixed(2)}`);
  });
}

describe.each(item.sizes.map((size) => size.name))('pictures of every step of the rack, %s', (size) => {
  it('keeps labels apart and on the picture, and shows every new part', () => {
    const model = buildModel(item, size);
    const plan = planItem(model, item.order, solids);
    const caches = newLineCaches();
    const faults: string[] = [];
    for (const step of plan.steps) {
      const pictures = stepPictures({ model, plan, cuts: planTubes(model), solids, draw: (bodies, view) => lineDrawing(bodies, view, { caches }) }, step);
      faults.push(...pictures.flatMap(labelFaults));
      if (step.standing.name !== 'bench') faults.push(...hiddenParts(step, pictures));
    }
    expect(faults).toEqual([]);
  });
});
