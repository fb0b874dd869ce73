import { beforeAll, describe, expect, it } from 'vitest';
import type { Model, Part, Solids } from '../../src/model/index.ts';
import { planItem, type Plan } from '../../src/plan/index.ts';
import type { Face } from '../../src/read/index.ts';
import { itemFrom, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { layoutText, type Layout } from '../support/layouts.ts';
import { partOf } from '../support/rack.ts';

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

/** Left for right and right for left in a face, a key or an id. */
const swapped = <Text extends string>(text: Text): Text =>
  text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left')) as Text;

const mirrored = (layout: Layout): Layout => ({
  ...layout,
  ...(layout.frames && { frames: layout.frames.map((frame) => ({ ...frame, sides: frame.sides.map(swapped) })) }),
  ...(layout.plates && { plates: layout.plates.map((plate) => ({ ...plate, on: plate.on.map(swapped) })) }),
  ...(layout.braces && { braces: layout.braces.map((brace) => ({ ...brace, faces: brace.faces.map(swapped) })) }),
});

const built = (layout: Layout): Model => modelOf(itemFrom(layoutText(layout)));

/** Where every part of a kind is, and how large, in words that can be sorted; to a hundredth of a millimetre, `turn` −1 seen in a mirror. */
const roomOf = (model: Model, turn: 1 | -1): readonly string[] => model.parts.map((part) => {
  const { min, max } = solids.box(part);
  const x = turn === 1 ? [min[0], max[0]] : [-max[0], -min[0]];
  return [part.kind, ...[...x, min[1], max[1], min[2], max[2]].map((value) => (Math.round(value * 100) / 100 + 0).toFixed(2))].join(' ');
}).sort();

const base: Layout = { width: 300, depth: 260, decks: [{ name: 'top', tops: [400] }], posts: { front: 720, back: 720 } };

/** An L of tubes below, a plate on one side above, and cables on that side and behind. */
const leftHanded: Layout = {
  ...base,
  frames: [
    { name: 'foot', level: 110, sides: ['left', 'back'] },
    { name: 'rail', level: 500, rise: 140, count: 2, sides: ['left', 'back'] },
  ],
  plates: [{ name: 'screen', on: ['left'], from: 'rail', to: 'rail' }],
  braces: [{ from: 'foot', to: 'top', faces: ['left', 'back'] }],
};

/** Three sides, one of them the left. */
const threeSided: Layout = { ...base, frames: [{ name: 'foot', level: 110, sides: ['left', 'front', 'back'] }] };

describe.each([['an L of tubes with a plate', leftHanded], ['three sides of tubes', threeSided]])('%s and its mirror image', (_, layout) => {
  const [one, other] = [built(layout), built(mirrored(layout))];
  let plans: readonly [Plan, Plan];
  beforeAll(() => { plans = [planItem(one, [], solids), planItem(other, [], solids)]; });

  it('are not the same', () => {
    expect(roomOf(other, 1)).not.toEqual(roomOf(one, 1));
  });

  it('fill the same room, seen in a mirror', () => {
    expect(roomOf(other, -1)).toEqual(roomOf(one, 1));
  });

  it('have the same parts, left and right changed about', () => {
    expect(other.parts.map((part) => part.id).sort()).toEqual(one.parts.map((part) => swapped(part.id)).sort());
    for (const part of one.parts) expect([part.id, partOf(other, swapped(part.id)).mass]).toEqual([part.id, part.mass]);
  });

  it('take the same tubes and the same plates, cut alike', () => {
    expect(other.tubes).toEqual(one.tubes);
    expect(other.plates).toEqual(one.plates.map((plate) => ({ ...plate, partIds: plate.partIds.map(swapped) })));
  });

  it('take the same steps: their keys changed about, each with as many new parts, people and minutes', () => {
    const told = ({ steps }: Plan, turn: (text: string) => string): readonly string[] => steps.map((step) =>
      JSON.stringify([turn(step.key), step.people, step.minutes, step.times, step.newParts.map(({ kind, ids }) => [kind, ids.length]).sort()])).sort();
    // What is at hand with the first step of a frame, and what is pushed in last, is told from its left to its right.
    const frameless = (list: readonly string[]): readonly string[] => list.filter((line) => !/push-tubes:(foot|rail)|close-frame:(foot|rail)/.test(line));
    expect(frameless(told(plans[1], (key) => key))).toEqual(frameless(told(plans[0], swapped)));
    expect(plans[1].steps.map((step) => step.key).sort()).toEqual(plans[0].steps.map((step) => swapped(step.key)).sort());
  });

  it('take them in the same order, but that rules put the left side first', () => {
    const sideless = ({ steps }: Plan): readonly string[] => steps.map((step) => step.key.replace(/left|right/g, 'side'));
    expect(sideless(plans[1])).toEqual(sideless(plans[0]));
  });

  it('need the same for the same reasons, rules apart', () => {
    const needs = ({ reasons }: Plan, turn: (text: string) => string): readonly string[] => reasons
      .filter(({ rule, first, then }) => rule === 'geometry' && !/push-tubes|close-frame/.test(first + then))
      .map(({ first, then, parts }) => `${turn(first)} < ${turn(then)}: ${parts.map(turn).sort().join(' ')}`).sort();
    expect(needs(plans[1], (text) => text).length).toBeGreaterThan(5);
    // Which of two crossed cables lies outside, and which pin of a plate is its first, is counted from the face's own left.
    const uncounted = (list: readonly string[]): readonly string[] => list.filter((line) => !/cable-|screen/.test(line));
    expect(uncounted(needs(plans[1], (text) => text))).toEqual(uncounted(needs(plans[0], swapped)));
  });
});

describe('plates on both sides', () => {
  const sides: readonly Face[] = ['left', 'right'];
  const both: Layout = {
    ...base,
    frames: [{ name: 'rail', level: 500, rise: 140, count: 2, sides: ['left', 'right'] }],
    plates: [{ name: 'screen', on: sides, from: 'rail', to: 'rail' }],
  };
  const model = built(both);
  let plan: Plan;
  beforeAll(() => { plan = planItem(model, [], solids); });

  it('are one kind of plate, cut twice', () => {
    expect(model.plates).toHaveLength(1);
    expect(model.plates[0]?.partIds).toEqual(['screen-left', 'screen-right']);
    expect(plan.steps.filter((step) => step.action === 'cut-panel').map((step) => [step.key, step.times])).toEqual([['cut-panel', 2]]);
    const shapes = ['screen-left', 'screen-right'].map((id) => partOf(model, id).shape);
    expect(shapes[1]).toEqual(shapes[0]);
  });

  it('stand as mirror images, and so do their pins and nuts', () => {
    const room = (side: Face, turn: 1 | -1): readonly string[] => {
      const own = (part: Part): boolean => part.id.includes(`screen-${side}`);
      return roomOf({ ...model, parts: model.parts.filter(own) }, turn);
    };
    expect(room('left', 1).length).toBeGreaterThan(8);
    expect(room('right', -1)).toEqual(room('left', 1));
  });

  it('are put up by the same work, one side after the other', () => {
    const work = (side: Face): readonly string[] => plan.steps.filter((step) => step.key.endsWith(`:screen-${side}`)).map((step) => `${step.action} ${step.number}`);
    expect(work('left')).toHaveLength(3);
    const [first = 0] = plan.steps.filter((step) => step.key === 'hold-panel:screen-left').map((step) => step.number);
    expect(work('left')).toEqual(['hold-panel', 'drill', 'pin-panel'].map((action, index) => `${action} ${first + index}`));
    expect(work('right')).toEqual(['hold-panel', 'drill', 'pin-panel'].map((action, index) => `${action} ${first + 3 + index}`));
  });

  it('are the same item when the sides are told the other way round, but for which comes first', () => {
    const turned = built({ ...both, plates: [{ name: 'screen', on: ['right', 'left'], from: 'rail', to: 'rail' }] });
    expect(roomOf(turned, 1)).toEqual(roomOf(model, 1));
    expect(turned.plates.map(({ partIds, ...plate }) => ({ ...plate, partIds: [...partIds].sort() }))).toEqual(model.plates);
    expect(planItem(turned, [], solids).steps.map((step) => step.key).sort()).toEqual(plan.steps.map((step) => step.key).sort());
  });
});

describe('an item that is its own mirror image', () => {
  it('looks the same in a mirror, part for part', () => {
    const model = built({ ...base, frames: [{ name: 'foot', level: 110, sides: ['left', 'right'] }], braces: [{ from: 'foot', to: 'top', faces: ['left', 'right'] }] });
    expect(roomOf(model, -1)).toEqual(roomOf(model, 1));
  });
});
