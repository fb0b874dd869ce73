import { describe, expect, it } from 'vitest';
import { buildModel, cableEnds, cableLoop, cableTest, capFor, cappedEnds, cappedTubes, openEnds, wallPlaces } from '../../src/model/index.ts';
import { suppliesOf } from '../../src/plan/index.ts';
import { everySize, itemNamed, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import type { Item } from '../../src/read/index.ts';
import { structureFrom, structureText } from '../support/structures.ts';


describe('the ends of a cable', () => {
  it('take their loops, knots and tail out of the cut length', () => {
    const { cut, between } = cableEnds(1680);
    expect([cut, between]).toEqual([2530, 1530]);
    expect(cut - between).toBeGreaterThanOrEqual(1000);
  });

  it('make a loop that goes over the head of every peg, out of what is cut for it: a ring is π times as long as it is wide (C)', () => {
    for (const { item, size } of everySize) {
      const model = modelOf(item, size);
      const cables = model.parts.flatMap(({ shape }) => (shape.form === 'cable' ? [shape.length] : []));
      if (cables.length === 0) continue;
      const { cord, head, inside, tail, doubled, knot } = cableLoop(model);
      expect(2 * inside).toBeGreaterThan(Math.PI * head + cord);
      expect(doubled).toBeGreaterThanOrEqual(inside + knot + tail);
      for (const { loops: [end, second] } of cables.map((length) => cableEnds(length))) {
        expect(end).toBeGreaterThanOrEqual(doubled + knot);
        expect(second).toBeGreaterThanOrEqual(2 * (inside + knot));
      }
    }
  });

  it('give way under 1 kg, or half of that, by what a string pulled with 100 N does: m g L / 4 T (C)', () => {
    for (const length of [400, 1000, 1680]) {
      const { mass, most } = cableTest(length);
      const exact = (mass * 9.80665 * (length / 2)) / (2 * 100);
      expect(most).toBeLessThanOrEqual(exact);
      expect(exact - most).toBeLessThan(5);
      const half = cableTest(length, 0.5);
      expect(half.mass).toBe(0.5);
      expect(half.most).toBeLessThanOrEqual(exact / 2);
      expect(exact / 2 - half.most).toBeLessThan(1);
    }
  });
});

describe('open ends of tubes', () => {
  it('are those of the posts on a rack: all others are in sockets', () => {
    expect(openEnds(modelOf(itemNamed('rack'), 'standard'))).toEqual([{ outside: 28, inside: 22, count: 8 }]);
  });

  it('get a cap as wide as the tube where the kit has one', () => {
    const { kit } = modelOf(itemNamed('rack'));
    expect(capFor(kit, { outside: 28, inside: 22 }).diameter).toBe(28);
    expect(capFor({ ...kit, catalogue: { ...kit.catalogue, fittings: [] } }, { outside: 40, inside: 34 })).toMatchObject({ diameter: 40, plug: 20 });
  });

  it('get no cap whose plug does not go into their bore, however wide it is', () => {
    const { kit } = modelOf(itemNamed('rack'));
    const wide = { is: 'end-cap', name: 'wide-cap', diameter: 41, thickness: 3, plug: 20, bore: 34, mass: 0.02 } as const;
    const more = { ...kit, catalogue: { ...kit.catalogue, fittings: [...kit.catalogue.fittings, wide] } };
    expect(capFor(kit, { outside: 38, inside: 32 })).toMatchObject({ name: 'end-cap', diameter: 38 });
    expect(capFor(more, { outside: 40, inside: 34 }).name).toBe('wide-cap');
    expect(capFor(more, { outside: 28, inside: 22 }).diameter).toBe(28);
  });

  it('stay as they are sawn where the kit has no caps', () => {
    const rack = modelOf(itemNamed('rack'), 'standard');
    const bare = { ...rack, kit: { ...rack.kit, caps: { tubeEnds: false, studs: false } } };
    expect([openEnds(bare).length, cappedEnds(bare), cappedTubes(bare).size]).toEqual([1, [], 0]);
    expect(cappedEnds(rack)).toEqual(openEnds(rack));
    expect([...cappedTubes(rack).values()]).toEqual(Array(4).fill([-1, 1]));
  });

  it('are two less for a tube with a cap at both ends', () => {
    const text = structureText('screen');
    const without = structureFrom('screen', text.replace(/\nfittings:\n.*\n/, '\n'));
    const count = (item: Item): number => openEnds(buildModel(item, 'standard')).reduce((sum, each) => sum + each.count, 0);
    expect([count(structureFrom('screen', text)), count(without)]).toEqual([0, 4]);
  });
});

describe('what is taken beside the parts', () => {
  const rack = modelOf(itemNamed('rack'), 'standard');
  const told = (wall: 'masonry' | 'timber' | 'board' | null) => {
    const { steps } = planOnce(rack, [], wall);
    return { last: steps.at(-1), supplies: suppliesOf({ steps }).map(({ name, count, size }) => [name, count, ...size]) };
  };

  it('is a cap for each open end, and at a wall of bricks two screws and two plugs a bracket', () => {
    expect(wallPlaces(rack)).toHaveLength(2);
    const { last, supplies } = told('masonry');
    expect(supplies).toEqual([['tube-cap', 8, 28], ['wall-bracket', 2], ['wall-screw', 4, 6, 70], ['wall-plug', 4, 8, 65], ['wall-cord', 2, 4, 600]]);
    expect([last?.action, last?.detail, last?.present.length]).toEqual(['fix-to-wall', { on: 'wall', wall: 'masonry' }, rack.parts.length]);
  });

  it('is no plug in timber, and nothing on a board', () => {
    expect(told('timber').supplies.map(([name]) => name)).toEqual(['tube-cap', 'wall-bracket', 'wall-screw', 'wall-cord']);
    expect(told('board').supplies.map(([name]) => name)).toEqual(['tube-cap']);
    expect(told('board').last?.action).toBe('fix-to-wall');
  });

  it('is no wall step where none is asked for', () => {
    expect(told(null).last?.action).not.toBe('fix-to-wall');
  });

  it('is a cap for no fewer ends than the posts have, on every item', () => {
    for (const { item, size } of everySize) {
      const model = modelOf(item, size);
      expect(openEnds(model).reduce((sum, { count }) => sum + count, 0)).toBeLessThanOrEqual(2 * model.tubes.reduce((sum, { count }) => sum + count, 0));
    }
  });
});
