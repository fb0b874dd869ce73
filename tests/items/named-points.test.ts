import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { wrapOf, type Model, type Part, type Solids } from '../../src/model/index.ts';
import { FaultError } from '../../src/read/index.ts';
import { everySize, itemFrom, kitText, modelOf, withChanges } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { layoutText, type FrameRow, type Layout } from '../support/layouts.ts';

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

const highest = (part: Part): number => solids.box(part).max[2];
const middle = (part: Part): number => (solids.box(part).max[2] + solids.box(part).min[2]) / 2;

const partsOf = (model: Model, group: string, kind: (kind: Part['kind']) => boolean): readonly Part[] =>
  model.parts.filter((part) => part.group === group && kind(part.kind));

const isTube = (kind: Part['kind']): boolean => kind === 'long-tube' || kind === 'short-tube';

/** Heights of the middles of a piece's tubes as they stand, from the lowest, mm. All tubes of a group are on one height. */
function levelsOf(model: Model, piece: string): readonly number[] {
  return model.groups.filter((group) => group.piece === piece).map((group) => {
    const heights = partsOf(model, group.name, isTube).map(middle);
    for (const height of heights) expect(height).toBeCloseTo(heights[0] ?? Number.NaN, 6);
    return heights[0] ?? Number.NaN;
  }).sort((a, b) => a - b);
}

/** Heights of the upper faces of a deck piece as they stand, mm. */
const topsOf = (model: Model, piece: string): readonly number[] => model.groups.filter((group) => group.piece === piece)
  .map((group) => Math.max(...partsOf(model, group.name, (kind) => kind === 'panel').map(highest))).sort((a, b) => a - b);

/** High over all else, so that no joint of the probe stands in another, mm. */
const OVER = 3000;

/** The height that a later piece takes for a named point: where the tube of a frame at that point, and `OVER`, stands. */
function probed(layout: Layout, point: string): number {
  const probe: FrameRow = { name: 'probe', level: `${point} + ${OVER} mm`, sides: ['front'] };
  const model = modelOf(itemFrom(layoutText({ ...layout, frames: [...layout.frames ?? [], probe] })));
  return (levelsOf(model, 'probe')[0] ?? Number.NaN) - OVER;
}

const anyHeights = fc.record({
  first: fc.integer({ min: 120, max: 400 }),
  rise: fc.integer({ min: 100, max: 300 }),
  decks: fc.integer({ min: 1, max: 3 }),
  railRise: fc.integer({ min: 90, max: 200 }),
  rails: fc.integer({ min: 1, max: 3 }),
});

describe('named points', () => {
  it('reach later pieces as the model has them: level, top and high of decks, level and high of frames', () => {
    fc.assert(fc.property(anyHeights, ({ first, rise, decks, railRise, rails }) => {
      const layout: Layout = {
        width: 300, depth: 260, posts: { front: 2000, back: 2000 },
        decks: [{ name: 'low-deck', tops: Array.from({ length: decks }, (_, index) => first + index * rise) }],
        frames: [{ name: 'mid-rail', level: 'low_deck_high + 100 mm', rise: railRise, count: rails, sides: ['back'] }],
      };
      const model = modelOf(itemFrom(layoutText(layout)));
      const [deckLevels, deckTops, railLevels] = [levelsOf(model, 'low-deck'), topsOf(model, 'low-deck'), levelsOf(model, 'mid-rail')];
      expect(probed(layout, 'low_deck_level')).toBeCloseTo(deckLevels[0] ?? Number.NaN, 6);
      expect(probed(layout, 'low_deck_high')).toBeCloseTo(deckLevels.at(-1) ?? Number.NaN, 6);
      // A wrapped panel's upper face is built to a few thousandths.
      expect(probed(layout, 'low_deck_top')).toBeCloseTo(deckTops[0] ?? Number.NaN, 2);
      expect(probed(layout, 'mid_rail_level')).toBeCloseTo(railLevels[0] ?? Number.NaN, 6);
      expect(probed(layout, 'mid_rail_high')).toBeCloseTo(railLevels.at(-1) ?? Number.NaN, 6);
      expect(railLevels[0]).toBeCloseTo((deckLevels.at(-1) ?? Number.NaN) + 100, 6);
    }), { numRuns: 20 });
  });

  it('are those of the lowest and the highest, whichever comes first in the file', () => {
    const layout: Layout = {
      width: 300, depth: 260, posts: { front: 900, back: 900 }, decks: [{ name: 'top', tops: [600, 400] }],
      frames: [{ name: 'rail', level: 250, rise: -100, count: 2, sides: ['back'] }],
    };
    const model = modelOf(itemFrom(layoutText(layout)));
    expect(probed(layout, 'top_top')).toBeCloseTo(400, 6);
    expect(probed(layout, 'top_level')).toBeCloseTo(levelsOf(model, 'top')[0] ?? Number.NaN, 6);
    expect(probed(layout, 'top_high')).toBeCloseTo(levelsOf(model, 'top')[1] ?? Number.NaN, 6);
    expect([probed(layout, 'rail_level'), probed(layout, 'rail_high')]).toEqual([150, 250]);
  });
});

describe.each(everySize.filter(({ item }) => item.pieces.length > 0))('heights of the $name', ({ item, size }) => {
  const model = modelOf(item, size);

  it('of decks are what the file says, measured on the panels and the tubes', () => {
    const tops = item.pieces.flatMap((piece) => (piece.is === 'deck' ? topsOf(model, piece.name) : []));
    expect(tops).toHaveLength(model.deckTops.length);
    [...model.deckTops].sort((a, b) => a - b).forEach((top, index) => expect(tops[index]).toBeCloseTo(top, 2));
    for (const group of model.groups) expect(levelsOf(model, group.piece)).toContainEqual(expect.closeTo(group.level, 6));
  });

  it('of posts follow the pieces they are told by', () => {
    const at = (name: string): number => model.parameters[name]?.value ?? Number.NaN;
    const last = (piece: string): number => levelsOf(model, piece).at(-1) ?? Number.NaN;
    const top = (piece: string): number => topsOf(model, piece)[0] ?? Number.NaN;
    // The files' own words, written out once more from what stands there.
    const told: Readonly<Record<string, () => readonly [front: number, back: number]>> = {
      bed: () => [last('guard') + 24, last('guard') + 24],
      chair: () => [top('seat') + at('headroom'), last('back-rail') + 24 + at('headroom')],
      desk: () => [top('top') + at('headroom'), top('top') + at('headroom')],
      rack: () => [at('height'), at('height')],
      stool: () => [top('seat') + 12, top('seat') + 12],
    };
    const post = (end: string): number => Math.max(...model.parts.filter((part) => part.kind === 'post' && part.id.endsWith(end)).map(highest));
    const [front, back] = told[item.name]?.() ?? [post('-front'), post('-back')];
    expect(post('-front')).toBeCloseTo(front, 2);
    expect(post('-back')).toBeCloseTo(back, 2);
  });
});

describe('the reader\'s stand-in for how far a deck\'s tubes lie under its upper face', () => {
  interface Stock {
    readonly tube: number;
    readonly air: number;
    readonly thickness: number;
  }

  const anyStock: fc.Arbitrary<Stock> = fc.record({
    tube: fc.integer({ min: 36, max: 56 }).map((half) => half / 2),
    air: fc.integer({ min: 1, max: 8 }).map((quarters) => quarters / 4),
    thickness: fc.integer({ min: 18, max: 24 }).map((half) => half / 2),
  });

  const itemOf = ({ tube, air, thickness }: Stock, level: string) => {
    const kit = withChanges(kitText, [
      { from: 'outside-diameter: 28 mm', to: `outside-diameter: ${tube} mm` },
      { from: 'bore: 28.6 mm', to: `bore: ${tube + 0.6} mm` },
      { from: 'wrap-clearance: 0.5 mm', to: `wrap-clearance: ${air} mm` },
      { from: 'thickness: 9 mm', to: `thickness: ${thickness} mm` },
    ]);
    const text = layoutText({ width: 300, depth: 260, posts: { front: 420, back: 420 }, decks: [{ name: 'top', tops: [400] }], frames: [{ name: 'foot', level, sides: ['back'] }] });
    return itemFrom(text, kit);
  };

  /** What the reader takes it for, from the fault it gives of a frame as far under the floor. */
  function standIn(stock: Stock): number {
    try {
      itemOf(stock, 'top_level - 400 mm');
    } catch (error) {
      if (!(error instanceof FaultError)) throw error;
      const told = /which gives (-[0-9.]+) mm in size only/.exec(error.faults[0]?.found ?? '');
      expect(error.faults.map((fault) => fault.field)).toEqual(['pieces.foot.level']);
      return -Number(told?.[1]);
    }
    throw new Error('a frame under the floor is read');
  }

  it('is the model\'s wrap radius and panel thickness, whatever the kit', () => {
    fc.assert(fc.property(anyStock, (stock) => {
      const model = modelOf(itemOf(stock, 'top_level - 200 mm'));
      const { radius, thickness } = wrapOf(model.kit);
      expect(standIn(stock)).toBeCloseTo(radius + thickness, 9);
      const [group] = model.groups;
      expect((model.deckTops[0] ?? Number.NaN) - (group?.level ?? Number.NaN)).toBeCloseTo(radius + thickness, 9);
      expect(model.groups[1]?.level).toBeCloseTo((group?.level ?? Number.NaN) - 200, 9);
    }), { numRuns: 30 });
  });

  it('is what stands there: from the middle of the tubes to the upper face of the folded panel', () => {
    for (const stock of [{ tube: 28, air: 0.5, thickness: 9 }, { tube: 22, air: 1, thickness: 10.5 }]) {
      const model = modelOf(itemOf(stock, 'top_level - 200 mm'));
      expect((topsOf(model, 'top')[0] ?? Number.NaN) - (levelsOf(model, 'top')[0] ?? Number.NaN)).toBeCloseTo(standIn(stock), 2);
    }
  });
});
