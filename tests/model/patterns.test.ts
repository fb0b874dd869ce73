import { describe, expect, it } from 'vitest';
import { buildModel, type CutPattern, type Model, type Vec2 } from '../../src/model/index.ts';
import { deckSizes } from '../support/all-items.ts';
import { inside, isSimple } from '../support/polygons.ts';
import { partOf, rackModel, solids } from '../support/rack.ts';
import { changedText, structureFrom, structureItem, structureNames, structureText } from '../support/structures.ts';

const rounded = (points: readonly Vec2[]): string[] => points.map(([x, y]) => `${(x + 0).toFixed(6)} ${(y + 0).toFixed(6)}`.replaceAll('-0.000000', '0.000000')).sort();

const wrappedOf = (model: Model): CutPattern => {
  const pattern = model.patterns.find(({ form }) => form === 'wrapped');
  if (pattern === undefined) throw new Error('no wrapped panel');
  return pattern;
};

describe.each(deckSizes)('the pattern of the panel that is wrapped in $name', ({ model }) => {
  const { pattern: old, patterns, parts } = model();
  const pattern = wrappedOf(model());

  it('has the outline, the holes and the flaps that decks have always had', () => {
    expect(rounded(pattern.outline)).toEqual(rounded(old.outline));
    expect(rounded(pattern.holes.map(({ at }) => at))).toEqual(rounded(old.holes.map(({ at }) => at)));
    for (const flap of old.flaps) {
      const own = pattern.flaps.find(({ name }) => name === flap.side);
      const inset = old.axes[0] - old.inside[0];
      expect(own?.bends.map(({ at }) => at)).toEqual([...flap.creases, flap.halfCut].map((place) => expect.closeTo(place - inset, 9)));
      expect([own?.edge, own?.pinLine, own?.corner, own?.widestGap]).toEqual([flap.edge - inset, flap.pinLine - inset, flap.corner, flap.widestGap].map((value) => expect.closeTo(value, 9)));
      expect(own?.pins).toEqual(flap.pins.map((place) => expect.closeTo(place, 9)));
    }
  });

  it('and every other pattern belong to parts that are there, each to one', () => {
    const panels = parts.filter(({ kind }) => kind === 'panel' || kind === 'flat-panel').map(({ id }) => id);
    expect(patterns.flatMap(({ partIds }) => partIds).sort()).toEqual([...panels].sort());
  });
});

describe('the solid of a folded pattern', () => {
  const { pattern: old } = rackModel('standard');
  const pattern = wrappedOf(rackModel('standard'));
  const sides = ['left', 'right', 'front', 'back'] as const;

  it.each([0, 0.2, 0.5, 0.77, 1])('fills the same room as a deck\'s panel, folded to %s', (stage) => {
    const folding = { left: stage, right: stage, front: stage, back: stage };
    const one = { shape: { form: 'panel', pattern: old, folding } as const, pose: partOf(rackModel('standard'), 'deck-1/panel').pose };
    const other = { shape: { form: 'folded', pattern, folding } as const, pose: one.pose };
    const volume = solids.volume(one.shape);
    expect(solids.volume(other.shape) / volume).toBeCloseTo(1, 4);
    expect(solids.overlap(one, other) / volume).toBeCloseTo(1, 3);
  });

  it.each(sides)('folds %s alone', (side) => {
    const folding = Object.fromEntries(sides.map((each) => [each, each === side ? 1 : 0]));
    const box = solids.box({ shape: { form: 'folded', pattern, folding }, pose: [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1] });
    const flat = { left: -box.min[0], right: box.max[0], front: -box.min[1], back: box.max[1] };
    const blank = { left: pattern.max[0], right: pattern.max[0], front: pattern.max[1], back: pattern.max[1] };
    for (const each of sides) expect([each, Math.abs(flat[each] - blank[each]) < 0.01]).toEqual([each, each !== side]);
  });
});

describe.each(structureNames)('the patterns of the %s', (name) => {
  const { patterns } = buildModel(structureItem(name), 'standard');

  it('are simple outlines, anticlockwise, with every hole inside and the blank on the stock', () => {
    for (const { outline, holes, min, max } of patterns) {
      expect(isSimple(outline)).toBe(true);
      expect(outline.reduce((sum, [x, y], place) => sum + x * (outline[(place + 1) % outline.length]?.[1] ?? 0) - y * (outline[(place + 1) % outline.length]?.[0] ?? 0), 0)).toBeGreaterThan(0);
      for (const { at } of holes) expect([at, inside(outline, at)]).toEqual([at, true]);
      const [longer, shorter] = [max[0] - min[0], max[1] - min[1]].sort((a, b) => b - a);
      expect(longer).toBeLessThanOrEqual(1500);
      expect(shorter).toBeLessThanOrEqual(1000);
    }
  });
});

describe('a panel wrapped on two opposite bars', () => {
  const text = changedText(structureText('leaning-chair'), 'seat: { is: wrapped, loop: [long.0, short.1, long.1, short.0] }', 'seat: { is: wrapped, loop: [long.0, short.1, long.1, short.0], wrap: [short.0, short.1] }');
  const model = buildModel(structureFrom('leaning-chair', text), 'standard');
  const pattern = wrappedOf(model);

  it('has two flaps, and its other edges lie flush on their bars, pinned', () => {
    expect(pattern.flaps.map(({ name }) => name)).toEqual(['left', 'right']);
    // Half of 485 between the bars' axes, and half a tube.
    expect(pattern.max[1]).toBeCloseTo(242.5 + 14, 9);
    const held = model.connections.filter((each) => each.is === 'pin' && each.holds.includes('seat'));
    // From notch to notch 485 − 2 · 74, less 25 at both ends: one bay of 287.
    expect(held).toHaveLength(4);
    const bar = partOf(model, 'long.0').shape;
    expect(bar.form === 'tube' && bar.holes.map(({ at }) => at)).toEqual([expect.closeTo(-143.5, 9), expect.closeTo(143.5, 9)]);
  });

  it('shares no room with anything', () => {
    const seat = partOf(model, 'seat');
    for (const part of model.parts) if (part !== seat) expect([part.id, solids.overlap(seat, part) < 1]).toEqual([part.id, true]);
  });
});

describe('a tray', () => {
  const model = buildModel(structureItem('chest'), 'standard');
  const tray = model.patterns.find(({ form }) => form === 'tray');

  it('has four walls, lugs at the ends of two, and rims on the three bars it is wrapped on', () => {
    expect(tray?.flaps.map(({ name, lugs, pins }) => [name, lugs.length, pins.length > 0])).toEqual([['left', 0, true], ['right', 0, true], ['front', 2, true], ['back', 2, false]]);
  });

  it('has room inside as the bars leave it: walls a thickness and a wrap radius inside their axes', () => {
    const front = tray?.flaps.find(({ name }) => name === 'front');
    // 170 to the axis, less 14.5 and 9; the wall turns up over a radius of 2.
    expect(front?.root).toBeCloseTo(340 / 2 - 14.5 - 9 - 2, 9);
    const part = partOf(model, 'tray');
    expect(part.pose[14]).toBeCloseTo(360 - 160, 9);
  });

  it('folds up without running through itself: no more is lost than its creases crush', () => {
    const { shape } = partOf(model, 'tray');
    if (shape.form !== 'folded' || tray === undefined) throw new Error('a tray is folded');
    // A crease by φ crushes t² tan(φ/2) of the section, the outer layer keeping its length (closed form of the mitre).
    const crushed = (turn: number, length: number): number => tray.thickness ** 2 * Math.tan(Math.abs(turn) / 2) * length;
    const loss = tray.flaps.reduce((sum, flap) => {
      const [wall, rim] = flap.strips.map(({ start, end }) => end - start);
      const ofWall = flap.bends.filter(({ is }) => is === 'crease').reduce((all, { turn }, place) => all + crushed(turn, (place < flap.wall ? wall : rim) ?? 0), 0);
      return sum + ofWall + flap.lugs.reduce((all, { bends, from, to }) => all + bends.reduce((each, { turn }) => each + crushed(turn, to - from), 0), 0);
    }, 0);
    const folded = solids.volume(shape);
    expect(folded).toBeCloseTo(solids.volume({ ...shape, folding: {} }) - loss, -4);
    expect(Math.abs(folded + loss - solids.volume({ ...shape, folding: {} })) / folded).toBeLessThan(0.002);
  });

  it('has pins whose points stay inside the wall', () => {
    const { thickness } = model.kit.panel;
    expect(model.kit.panelPin.length).toBeLessThan(2 * thickness);
    for (const { pin } of model.connections.filter((each) => each.is === 'panel-pin')) expect(solids.overlap(partOf(model, pin), partOf(model, 'tray'))).toBeLessThan(1);
  });
});
