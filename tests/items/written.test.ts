import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkModel } from '../../src/check/index.ts';
import { planTubes } from '../../src/cut/index.ts';
import { lineDrawing, newLineCaches, stepPictures, type Body } from '../../src/draw/index.ts';
import { type Model, type Solids } from '../../src/model/index.ts';
import { planItem, type Plan, type Step } from '../../src/plan/index.ts';
import { FaultError, type Declared, type Face, type Item } from '../../src/read/index.ts';
import { stepScene, type View } from '../../src/scene/index.ts';
import { itemFrom, modelOf, withChanges } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { layoutText, type FrameRow, type Layout } from '../support/layouts.ts';
import { hiddenParts, labelFaults } from '../support/pictures.ts';
import { partOf } from '../support/rack.ts';

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

const overlaps = ({ parts }: Model): readonly string[] => parts.flatMap((one, index) => parts.slice(index + 1).flatMap((other) =>
  (solids.overlap(one, other) > TOUCH ? [`${one.id} and ${other.id}`] : [])));

const newIds = (step: Step): readonly string[] => step.newParts.flatMap((group) => group.ids);

/** A stand that no file under `steps` has: bare sides, bars in front and behind, rails behind, two deck pieces, plates on three sides. */
const stand: Layout = {
  width: 320, depth: 280, posts: { front: 660, back: 880 },
  decks: [{ name: 'shelf', tops: [150] }, { name: 'board-2', tops: [620] }],
  frames: [
    { name: 'runner', level: 280, rise: 110, count: 2, sides: ['left', 'right'] },
    { name: 'bar', level: 490, sides: ['front', 'back'] },
    { name: 'rail', level: 720, rise: 120, count: 2, sides: ['back'] },
  ],
  plates: [
    { name: 'screen', on: ['back'], from: 'rail', to: 'rail' },
    { name: 'cheek', on: ['left', 'right'], from: 'runner', to: 'runner' },
  ],
  braces: [{ from: 'shelf', to: 'board-2', faces: ['back', 'left'] }],
};

describe('an item written from nothing', () => {
  const model = modelOf(itemFrom(layoutText(stand)));
  let plan: Plan;
  beforeAll(() => { plan = planItem(model, [], solids); });

  it('has its groups where the file has them, each with tubes on its own sides and joints at their ends', () => {
    expect(model.groups.map(({ name, kind, sides }) => [name, kind, [...sides].sort()])).toEqual([
      ['shelf-1', 'deck', ['back', 'front', 'left', 'right']], ['board-2-1', 'deck', ['back', 'front', 'left', 'right']],
      ['runner-1', 'frame', ['left', 'right']], ['runner-2', 'frame', ['left', 'right']],
      ['bar-1', 'frame', ['back', 'front']], ['rail-1', 'frame', ['back']], ['rail-2', 'frame', ['back']],
    ]);
    for (const group of model.groups) {
      const tubes = group.partIds.filter((id) => id.includes('-tube-'));
      expect([group.name, tubes.map((id) => id.slice(id.lastIndexOf('-') + 1)).sort()]).toEqual([group.name, [...group.sides].sort()]);
      const joints = group.partIds.filter((id) => id.includes('/joint-'));
      expect([group.name, joints.length]).toEqual([group.name, group.sides.length === 1 ? 2 : 4]);
    }
  });

  it('has no two parts in the same room', () => expect(overlaps(model)).toEqual([]));

  it('is made run by run: two decks one after the other, sides, bars, rails', () => {
    const made = (key: string): unknown => plan.steps.filter((step) => step.key === key).map((step) => [step.times, newIds(step).length]);
    // The decks are alike but for their height: made together.
    expect(plan.steps.filter(({ action }) => action === 'lay-frame').map(({ times }) => times)).toEqual([2]);
    // A tube with a joint at either end is the same thing in all of them.
    expect(plan.steps.filter(({ action }) => action === 'push-tubes').map(({ run, times }) => [run !== null, times > 1])).not.toContainEqual([false, true]);
    expect(made('cut-tubes')).toEqual([[1, 0]]);
    checkBroughtOnce(model, plan.steps);
  });

  it('shows a scene of every step off the bench', () => {
    for (const step of plan.steps) expect([step.key, stepScene(model, step, solids) !== null]).toEqual([step.key, step.standing.name !== 'bench']);
  });

  it('is drawn: every picture sound, labels apart and on it, every new part shown', async () => {
    const caches = newLineCaches();
    const givens = { model, plan, cuts: await planTubes(model), solids, draw: (bodies: readonly Body[], view: View) => lineDrawing(bodies, view, { caches }) };
    for (const step of plan.steps) {
      const pictures = stepPictures(givens, step);
      for (const { id, svg, width, height } of pictures) {
        expect([step.key, id, svg.startsWith('<svg'), /NaN|undefined|Infinity/.test(svg), width > 1 && height > 1]).toEqual([step.key, id, true, false, true]);
      }
      expect([step.key, pictures.flatMap(labelFaults)]).toEqual([step.key, []]);
      if (step.standing.name !== 'bench') expect(hiddenParts(step, pictures)).toEqual([]);
    }
  });

  it('may wish for the order of steps', () => {
    const [first, then] = [plan.steps.findLast(({ action }) => action === 'pin-side')?.key ?? '', plan.steps.find(({ action }) => action === 'pin-side')?.key ?? ''];
    const wish = `\n  - first: ${first}\n    then: ${then}\n    because: The longer one first.`;
    const item = itemFrom(withChanges(layoutText(stand), [{ from: 'order: []', to: `order:${wish}` }]));
    const keys = planItem(modelOf(item), item.order, solids).steps.map((step) => step.key);
    expect(keys.indexOf(first)).toBeLessThan(keys.indexOf(then));
  });
});

/** Every part of every kind is brought, once or as one of a batch of things alike. */
function checkBroughtOnce(model: Model, steps: readonly Step[]): void {
  const brought = steps.flatMap(newIds);
  expect(new Set(brought).size).toBe(brought.length);
  const made = (kind: string): number => steps.reduce((sum, step) => sum + step.times * newIds(step).filter((id) => partOf(model, id).kind === kind).length, 0);
  for (const kind of new Set(model.parts.map((part) => part.kind))) expect([kind, made(kind)]).toEqual([kind, model.parts.filter((part) => part.kind === kind).length]);
}

const FACES: readonly Face[] = ['left', 'right', 'front', 'back'];
const someSides = fc.subarray([...FACES], { minLength: 1 });

/** Small decks of a few sizes, so that each is proven once. */
const anySize = fc.constantFrom<readonly [number, number]>([300, 260], [260, 300]);

/** Frames under one deck and rails over it with room for every joint: what the program is for. Few heights, so that most pairs of parts are met again. */
const anySound: fc.Arbitrary<Layout> = fc.record({
  size: anySize, under: someSides, underCount: fc.integer({ min: 1, max: 2 }), level: fc.constantFrom(60, 100), rise: fc.constantFrom(80, 120),
  top: fc.constantFrom(380, 420), over: someSides, overCount: fc.integer({ min: 0, max: 3 }), gap: fc.constantFrom(60, 100),
  plates: fc.boolean(), braces: fc.boolean(),
}).map(({ size: [width, depth], under, underCount, level, rise, top, over, overCount, gap, plates, braces }) => {
  const rails: FrameRow[] = overCount === 0 ? [] : [{ name: 'rail', level: top + gap, rise, count: overCount, sides: over }];
  const height = top + (overCount === 0 ? 15 : gap + (overCount - 1) * rise + 40);
  const bare = (y: Face): boolean => !over.some((side) => side !== (y === 'front' ? 'back' : 'front'));
  const braced = FACES.filter((face) => under.includes(face));
  return {
    width, depth, decks: [{ name: 'top', tops: [top] }],
    frames: [{ name: 'foot', level, rise, count: underCount, sides: under }, ...rails],
    plates: plates && overCount > 1 ? [{ name: 'screen', on: over, from: 'rail', to: 'rail' }] : [],
    braces: braces && braced.length > 0 ? [{ from: 'foot', to: 'top', faces: braced }] : [],
    posts: { front: bare('front') ? top + 15 : height, back: bare('back') ? top + 15 : height },
  };
});

/** The same kinds of pieces at any heights, on posts of any lengths. */
const anyHeights: fc.Arbitrary<Layout> = fc.record({
  size: anySize, tops: fc.uniqueArray(fc.integer({ min: 6, max: 40 }), { minLength: 1, maxLength: 2 }),
  sides: someSides, count: fc.integer({ min: 1, max: 3 }), level: fc.integer({ min: 0, max: 40 }), rise: fc.integer({ min: 3, max: 10 }),
  others: someSides, otherLevel: fc.integer({ min: 2, max: 40 }), front: fc.integer({ min: 30, max: 70 }), back: fc.integer({ min: 30, max: 70 }),
}).map(({ size: [width, depth], tops, sides, count, level, rise, others, otherLevel, front, back }) => ({
  // In steps of 20 mm: near enough for every clash of a sleeve 74 mm long.
  width, depth, decks: [{ name: 'top', tops: tops.map((top) => 20 * top) }], posts: { front: 20 * front, back: 20 * back },
  frames: [{ name: 'foot', level: 20 * level, rise: 20 * rise, count, sides }, { name: 'bar', level: 20 * otherLevel, sides: others }],
}));

/** Findings that say whether the item can be put together at all, whatever it bears. */
const ofFit: readonly string[] = [
  'stock-panel', 'stock-plate', 'stock-tube', 'stock-cable', 'crease-angle', 'tab-pins', 'tab-edge', 'pin-length',
  'pins-apart', 'tabs-apart', 'opposite-tabs', 'joints-apart', 'post-reach',
];

/** What a layout declares that is no bed. */
const forAdults: Declared = { place: 'indoors', wall: 'masonry', people: 'adults', mark: null, mattress: null };

const failing = (model: Model): readonly string[] => checkModel(model, forAdults).findings.filter((finding) => finding.verdict === 'fail').map((finding) => finding.name);
const unfit = (model: Model): readonly string[] => failing(model).filter((name) => ofFit.includes(name));

/** What a call gives, or the faults it tells; any other exception goes on. */
function orFaults<Given>(call: () => Given): Given | FaultError {
  try {
    return call();
  } catch (error) {
    if (error instanceof FaultError) return error;
    throw error;
  }
}

describe('any sound layout', () => {
  it('is built, fits, and has every motion of its work free and every step shown', () => {
    fc.assert(fc.property(anySound, (layout) => {
      const item = itemFrom(layoutText(layout));
      const model = modelOf(item);
      expect(unfit(model)).toEqual([]);
      expect(overlaps(model)).toEqual([]);
      const { steps } = planItem(model, item.order, solids);
      checkBroughtOnce(model, steps);
      for (const step of steps) {
        expect([step.key, step.newParts.length <= 4]).toEqual([step.key, true]);
        expect([step.key, stepScene(model, step, solids) !== null]).toEqual([step.key, step.standing.name !== 'bench']);
      }
    }), { numRuns: 16 });
  });
});

describe('any layout at all', () => {
  it('with its frames anywhere is told to be unfit, or can be put together: nothing in between', async () => {
    await fc.assert(fc.asyncProperty(anyHeights, async (layout) => {
      const item = orFaults(() => itemFrom(layoutText(layout)));
      const model = item instanceof FaultError ? item : orFaults(() => modelOf(item));
      fc.pre(!(item instanceof FaultError || model instanceof FaultError) && unfit(model).length === 0);
      expect(overlaps(model)).toEqual([]);
      orFaults(() => planItem(model, item.order, solids));
      await planTubes(model);
      // About one in forty fits: a run is one that does.
    }), { numRuns: 5, maxSkipsPerRun: 400 });
  });

  it('of any size is read and built, or refused with faults; and judged', () => {
    const anyLength = fc.integer({ min: 100, max: 2000 });
    fc.assert(fc.property(anyHeights, anyLength, anyLength, (layout, width, depth) => {
      const item = orFaults(() => itemFrom(layoutText({ ...layout, width, depth })));
      if (item instanceof FaultError) return;
      const model = orFaults(() => modelOf(item));
      if (model instanceof FaultError) return;
      if (unfit(model).length > 0) return;
      for (const { name, figure, verdict } of checkModel(model, forAdults).findings) expect([name, verdict, Number.isNaN(figure)]).toEqual([name, verdict, false]);
    }), { numRuns: 60 });
  });
});

describe('a layout that the program does not build', () => {
  const base: Layout = { width: 300, depth: 260, decks: [{ name: 'top', tops: [400] }], posts: { front: 420, back: 420 } };
  const rails: FrameRow = { name: 'rail', level: 500, rise: 140, count: 2, sides: ['back'] };
  const read = (layout: Layout): Item => itemFrom(layoutText(layout));

  const faultOf = (call: () => unknown): string => {
    const given = orFaults(call);
    if (!(given instanceof FaultError)) throw new Error('not refused');
    return given.message;
  };

  const back = { front: 420, back: 700 };

  it('without a deck is refused at its file, with what is missing', () => {
    const item = read({ ...base, decks: [], frames: [{ name: 'foot', level: 120, sides: FACES }] });
    expect(faultOf(() => modelOf(item))).toMatch(/^steps\/trial\/item\.yaml:1:1 pieces: found no deck, would be right: a deck/);
  });

  it('without a post is refused at its file, with what is missing', () => {
    const text = layoutText(base).replace(/ {2}post:[\s\S]*?connections:[\s\S]*?order/, 'connections: []\norder');
    expect(faultOf(() => modelOf(itemFrom(text)))).toMatch(/pieces: found no post, would be right: a post/);
  });

  it.each<readonly [string, Layout, RegExp]>([
    ['a plate on a side without a tube', { ...base, frames: [rails], plates: [{ name: 'p', on: ['left'], from: 'rail', to: 'rail' }] }, /pieces\.p\.on.*a side on which rail has a tube: back/],
    ['a plate on a deck', { ...base, frames: [rails], plates: [{ name: 'p', on: ['back'], from: 'top', to: 'rail' }] }, /pieces\.p\.from.*a frame: the tubes of a deck are wrapped/],
    ['a plate on one frame', { ...base, frames: [{ ...rails, count: 1 }], plates: [{ name: 'p', on: ['back'], from: 'rail', to: 'rail' }] }, /pieces\.p\.to.*a frame higher than rail/],
    ['cables on a face without joints', { ...base, frames: [rails], braces: [{ from: 'top', to: 'rail', faces: ['left'] }] }, /faces.*a face with a corner joint of rail/],
    ['a plate through a deck', { ...base, posts: back, frames: [{ name: 'foot', level: 120, sides: FACES }, { ...rails, count: 1 }], plates: [{ name: 'p', on: ['back'], from: 'foot', to: 'rail' }] },
      /pieces\.p\.to: found rail in size only, would be right: a frame with no deck between, and top stands there$/],
    ['a plate on tubes that another one covers', { ...base, posts: back, frames: [rails], plates: [{ name: 'p', on: ['back'], from: 'rail', to: 'rail' }, { name: 'q', on: ['back'], from: 'rail', to: 'rail' }] },
      /pieces\.q\.on: found back in size only, would be right: sides on which p leaves the tubes free$/],
    ['a face braced twice', { ...base, frames: [{ name: 'foot', level: 120, sides: FACES }], braces: [{ from: 'foot', to: 'top', faces: ['left', 'back'] }, { from: 'foot', to: 'top', faces: ['back'] }] },
      /connections\.3\.faces\.1: found "back", would be right: each face once; back is braced between the same pieces above$/],
  ])('%s is refused when it is read', (_, layout, remedy) => {
    expect(faultOf(() => read(layout))).toMatch(remedy);
  });

  it.each<readonly [string, Layout]>([
    ['a frame in a deck', { ...base, frames: [{ name: 'foot', level: 370, sides: FACES }] }],
    ['two decks on one height', { ...base, decks: [{ name: 'top', tops: [400, 400] }] }],
    ['a frame over the posts', { ...base, frames: [{ name: 'foot', level: 600, sides: FACES }] }],
    ['a frame in the floor', { ...base, frames: [{ name: 'foot', level: 20, sides: FACES }] }],
    ['rails that share a corner with another frame', { ...base, frames: [{ name: 'a', level: 120, sides: ['left'] }, { name: 'b', level: 120, sides: ['back'] }] }],
    ['a deck too narrow for its tabs', { ...base, width: 100, depth: 100 }],
    ['a deck wider than the panel', { ...base, width: 1900, depth: 1900 }],
    ['a plate too narrow for its pins', { ...base, width: 200, posts: back, frames: [rails], plates: [{ name: 'p', on: ['back'], from: 'rail', to: 'rail' }] }],
  ])('%s is refused when it is read, or fails a finding of fit', (_, layout) => {
    const item = orFaults(() => read(layout));
    expect(item instanceof FaultError ? item.faults : unfit(modelOf(item))).not.toEqual([]);
  });
});
