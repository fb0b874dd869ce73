import { describe, expect, it } from 'vitest';
import { buildModel, placed, type Flap, type Model, type Part } from '../../src/model/index.ts';
import { partOf, rackModel, rackWith } from '../support/rack.ts';

const before = rackModel('standard');
const changed = (from: string, to: string): Model => buildModel(rackWith(from, to), 'standard');

/** Shape and pose of the parts of a kind. */
const standing = (model: Model, ...kinds: readonly Part['kind'][]): unknown =>
  model.parts.filter((part) => kinds.includes(part.kind)).map(({ id, shape, pose, mass }) => ({ id, shape, pose, mass }));

const shapes = (model: Model, ...kinds: readonly Part['kind'][]): unknown =>
  model.parts.filter((part) => kinds.includes(part.kind)).map(({ id, shape, mass }) => ({ id, shape, mass }));

const flaps = (model: Model, ...sides: readonly Flap['side'][]): readonly Flap[] =>
  model.pattern.flaps.filter((flap) => sides.includes(flap.side));

const length = (model: Model, id: string): number => {
  const { shape } = partOf(model, id);
  return shape.form === 'tube' || shape.form === 'cable' ? shape.length : Number.NaN;
};

const xOf = (model: Model, id: string): number => placed(partOf(model, id).pose, [0, 0, 0])[0];

describe('a width of 1100 mm in place of 1000 mm', () => {
  const after = changed('width: 1000 mm', 'width: 1100 mm');

  it('makes the blank 100 mm longer and no wider', () => {
    expect(after.pattern.blank[0] - before.pattern.blank[0]).toBeCloseTo(100, 9);
    expect(after.pattern.blank[1]).toBe(before.pattern.blank[1]);
    expect(after.pattern.inside[0] - before.pattern.inside[0]).toBeCloseTo(50, 9);
    expect(after.pattern.inside[1]).toBe(before.pattern.inside[1]);
  });

  it('makes the flaps of the long sides 100 mm longer and leaves their lines where they were', () => {
    flaps(after, 'front', 'back').forEach((flap, index) => {
      const old = flaps(before, 'front', 'back')[index];
      expect(flap.to - flap.from).toBeCloseTo(100 + (old?.to ?? 0) - (old?.from ?? 0), 9);
      expect({ ...flap, from: 0, to: 0, pins: [] }).toEqual({ ...old, from: 0, to: 0, pins: [] });
      expect(flap.pins[0]).toBeCloseTo((old?.pins[0] ?? 0) - 50, 9);
      expect(flap.pins[1]).toBeCloseTo((old?.pins[1] ?? 0) + 50, 9);
    });
  });

  it('changes nothing on the short flaps, the notches or the thickness', () => {
    expect(flaps(after, 'left', 'right')).toEqual(flaps(before, 'left', 'right'));
    expect(after.pattern.notch).toEqual(before.pattern.notch);
    expect(after.pattern.wrapRadius).toBe(before.pattern.wrapRadius);
  });

  it('makes long tubes 100 mm longer, leaves short tubes, posts, joints and pins as they are', () => {
    expect(length(after, 'deck-1/long-tube-front')).toBe(length(before, 'deck-1/long-tube-front') + 100);
    expect(shapes(after, 'short-tube', 'post', 'joint', 'joint-pin', 'wing-nut')).toEqual(shapes(before, 'short-tube', 'post', 'joint', 'joint-pin', 'wing-nut'));
    expect(standing(after, 'long-tube')).not.toEqual(standing(before, 'long-tube'));
  });

  it('moves what stands on the right by 50 mm to the right, on the left to the left, and nothing up or back', () => {
    for (const part of before.parts.filter(({ kind }) => ['post', 'joint', 'short-tube', 'joint-pin', 'wing-nut'].includes(kind))) {
      const [x, y, z] = placed(part.pose, [0, 0, 0]);
      expect(xOf(after, part.id) - x).toBeCloseTo(x > 0 ? 50 : -50, 6);
      expect(placed(partOf(after, part.id).pose, [0, 0, 0]).slice(1)).toEqual([y, z]);
    }
  });

  it('makes the cables of the back longer and leaves those of the ends as long as they were', () => {
    const span = (model: Model): number => 2 * model.pattern.axes[0];
    const rise = Math.sqrt(length(before, 'cable-back-1') ** 2 - span(before) ** 2);
    expect(length(after, 'cable-back-1')).toBeCloseTo(Math.hypot(span(before) + 100, rise), 6);
    expect(shapes(after, 'cable')).not.toEqual(shapes(before, 'cable'));
    for (const id of ['cable-left-1', 'cable-left-2', 'cable-right-1', 'cable-right-2']) expect(length(after, id)).toBe(length(before, id));
  });

  it('adds 100 mm to the lettered width and to nothing else', () => {
    const lettered = (model: Model): unknown => model.dimensions.map(({ name, value }) => ({ name, value: Math.round(value * 1e6) / 1e6 }));
    expect(lettered(after)).toEqual(before.dimensions.map(({ name, value }) => ({ name, value: Math.round((value + (name === 'width' ? 100 : 0)) * 1e6) / 1e6 })));
  });

  it('asks for the same tubes but long ones 100 mm longer', () => {
    expect(after.tubes).toEqual(before.tubes.map((need) => (need.kind === 'long-tube' ? { ...need, length: need.length + 100 } : need)));
  });
});

describe('a height of 1600 mm in place of 1500 mm', () => {
  const after = changed('height: 1500 mm', 'height: 1600 mm');

  it('leaves every deck as it is and sets them further apart, evenly', () => {
    expect(after.pattern).toEqual(before.pattern);
    expect(shapes(after, 'joint', 'long-tube', 'short-tube', 'panel', 'panel-pin')).toEqual(shapes(before, 'joint', 'long-tube', 'short-tube', 'panel', 'panel-pin'));
    after.deckTops.forEach((top, index) => expect(top).toBeCloseTo((before.deckTops[index] ?? 0) + (100 * index) / 3, 9));
  });

  it('makes the posts 100 mm longer, with their holes where the decks are', () => {
    expect(length(after, 'post-left-front')).toBe(length(before, 'post-left-front') + 100);
    const { shape, pose } = partOf(after, 'post-left-front');
    if (shape.form !== 'tube') throw new Error('a post is a tube');
    const heights = shape.holes.map(({ at }) => placed(pose, [at, 0, 0])[2]);
    const below = after.kit.joint.pinHeight + after.pattern.wrapRadius + after.pattern.thickness;
    heights.forEach((height, index) => expect(height).toBeCloseTo((after.deckTops[index] ?? 0) - below, 6));
  });
});

describe('five decks in place of four', () => {
  const after = changed('decks: 4', 'decks: 5');

  it('adds one deck\'s parts, and four pins and nuts for its corners', () => {
    const count = (model: Model, kind: Part['kind']): number => model.parts.filter((part) => part.kind === kind).length;
    for (const kind of ['joint', 'long-tube', 'short-tube', 'panel', 'panel-pin'] as const) expect(count(after, kind) * 4).toBe(count(before, kind) * 5);
    for (const kind of ['joint-pin', 'wing-nut'] as const) expect(count(after, kind)).toBe(count(before, kind) + 4);
    for (const kind of ['post', 'cable'] as const) expect(count(after, kind)).toBe(count(before, kind));
  });
});

describe('a size that is not there', () => {
  it('is refused by name, with the sizes there are', () => {
    expect(() => rackModel('huge')).toThrow(/steps\/rack\/item\.yaml: no size "huge"; would be right: one of low, standard, tall/);
  });
});
