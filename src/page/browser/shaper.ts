import { checkModel } from '../../check/index.ts';
import { planTubes, tubeLetter, type TubeCutPlan } from '../../cut/index.ts';
import { cutBars, patternPicture, plateSheet, type DrawnPicture } from '../../draw/index.ts';
import { declaredFor } from '../../read/index.ts';
import { buildModel, loadSolids, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import { letteredScene, type Mark } from '../../scene/index.ts';
import { driversOf } from './workers/drivers.ts';
import type { Drawing, Shaped, ShaperAnswer, Subject } from './workers/messages.ts';
import { breath, newestOnly } from './workers/newest.ts';
import { newPacker, type Pack, type Packed } from './workers/packer.ts';
import { itemOf, orFaulty } from './workers/subject.ts';

/** Paper of the flat pattern on the page, mm. */
const PATTERN = { width: 165, height: 230 };
/** The solid kernel keeps every shape it built: a new one after so many changes. */
const CHANGES_A_KERNEL = 80;
/** How long the values must rest before they are checked, ms: the checks take longer than the shapes. */
const REST = 120;

/** Worker: from values to shapes, lengths, drawings and findings. */
function start(): void {
  let kernel: Promise<Solids> = loadSolids();
  let pack = newPacker('item-0');
  let changes = 0;

  const freshKernel = async (): Promise<Solids> => {
    changes += 1;
    if (changes % CHANGES_A_KERNEL === 0) {
      kernel = loadSolids();
      pack = newPacker(`item-${changes}`);
    }
    return kernel;
  };

  const ask = newestOnly<Subject>(async (subject, isStale) => {
    let built: Parameters<typeof checkModel> | null = null;
    tell(await orFaulty(subject.run, async () => {
      const item = itemOf(subject);
      const model = buildModel(item, subject.size);
      built = [model, declaredFor(item, subject.size)];
      return shaped(subject.run, model, await planTubes(model), await freshKernel(), pack);
    }));
    await breath(REST);
    const given = built as Parameters<typeof checkModel> | null;
    if (given === null || isStale()) return;
    tell(await orFaulty(subject.run, () => ({ packed: null, told: { answer: 'checked' as const, run: subject.run, ...checkModel(...given) } })));
    await breath();
    if (isStale()) return;
    tell(await orFaulty(subject.run, () => ({ packed: null, told: { answer: 'driven' as const, run: subject.run, drivers: driversOf(subject) } })));
  });
  addEventListener('message', ({ data }: MessageEvent<Subject>) => { ask(data); });
}

type Told = { readonly packed: Packed | null; readonly told: ShaperAnswer } | Extract<ShaperAnswer, { answer: 'faulty' }>;

function tell(answer: Told): void {
  if ('answer' in answer) postMessage(answer);
  else postMessage(answer.told, { transfer: answer.packed?.transfer ?? [] });
}

function shaped(run: number, model: Model, cuts: TubeCutPlan, solids: Solids, pack: Pack): { packed: Packed; told: Shaped } {
  const scene = letteredScene(model, solids);
  const packed = pack(scene.bodies, [], scene.marks.flatMap(placesOf));
  return {
    packed,
    told: {
      answer: 'shaped', run, packet: packed.packet, marks: scene.marks, use: model.use, dimensions: model.dimensions, tubes: model.tubes.map((tube) => ({ ...tube, letter: tubeLetter(model, tube.length) ?? '' })),
      stockTubes: { used: cuts.tubesUsed, length: cuts.stock },
      blank: model.pattern.blank,
      pattern: drawn(patternPicture(model.pattern, PATTERN)),
      bars: drawn(cutBars(cuts)),
      plates: model.plates.map((_, index) => drawn(plateSheet(model, index))),
    },
  };
}

/** Ends of a lettered line: they are to be seen with the item. */
const placesOf = (mark: Mark): readonly Vec3[] => (mark.mark === 'length'
  ? [mark.from, mark.to].map((end): Vec3 => [end[0] + mark.away[0], end[1] + mark.away[1], end[2] + mark.away[2]]) : []);

const drawn = ({ svg, width, height }: DrawnPicture): Drawing => ({ svg, width, height });

start();
