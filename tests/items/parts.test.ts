import { beforeAll, describe, expect, it } from 'vitest';
import { chained, moved, placed, undone, type Model, type Part, type Shape, type Solids } from '../../src/model/index.ts';
import { partSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { partOf } from '../support/rack.ts';
import { heldTogether } from '../support/joinings.ts';

/** Shared volume under this is rounding, mm³. */
const TOUCH = 1;

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

const pairs = <T>(list: readonly T[]): readonly (readonly [T, T])[] =>
  list.flatMap((one, index) => list.slice(index + 1).map((other) => [one, other] as const));

/** The shape as it is before any hole is drilled or punched in it. */
function whole(shape: Shape): Shape {
  switch (shape.form) {
    case 'tube': case 'plate': return { ...shape, holes: [] };
    case 'joint': return { ...shape, drilled: null };
    default: return shape;
  }
}

/** Ids of the parts that a part would run into were nothing drilled. */
const throughs = (model: Model, part: Part): readonly string[] => model.parts
  .filter((other) => other.id !== part.id && solids.overlap(part, { shape: whole(other.shape), pose: other.pose }) > TOUCH)
  .map((other) => other.id).sort();

/** Items told in the short form, with decks and frames between four posts. */
const deckSizes = partSizes.filter(({ item }) => item.pieces.length > 0);

describe.each(deckSizes)('$name', ({ item, size }) => {
  const model = modelOf(item, size);

  it('has no two parts in the same room', () => {
    expect(pairs(model.parts).flatMap(([one, other]) => {
      const volume = solids.overlap(one, other);
      return volume > TOUCH ? [`${one.id} and ${other.id}: ${volume.toFixed(1)} mm³`] : [];
    })).toEqual([]);
  });

  it('has every part named once, of a mass, and every joining between parts that are there', () => {
    const ids = model.parts.map((part) => part.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const part of model.parts) expect([part.id, part.mass > 0]).toEqual([part.id, true]);
    for (const { by, parts } of heldTogether(model)) {
      for (const id of [by, ...parts]) expect(ids).toContain(id);
    }
  });

  it('stands on the floor with the ends of its four posts and with nothing else', () => {
    const low = model.parts.map((part) => ({ id: part.id, z: solids.box(part).min[2] })).filter(({ z }) => z < 1e-3);
    expect(low.map(({ id }) => id).sort()).toEqual(['post-left-back', 'post-left-front', 'post-right-back', 'post-right-front']);
    for (const { id, z } of low) expect([id, Math.abs(z) < 1e-3]).toEqual([id, true]);
  });

  it('has a joint of every deck and frame all on its post: no sleeve hangs over its end', () => {
    for (const joint of model.parts.filter((part) => part.kind === 'joint')) {
      const { min, max } = solids.box(joint);
      const post = heldTogether(model).find(({ by, parts }) => by.startsWith('joint-pin-') && parts.includes(joint.id))?.parts.find((id) => id.startsWith('post-')) ?? '';
      const box = solids.box(partOf(model, post));
      expect([joint.id, post, min[2] > box.min[2] && max[2] < box.max[2] + 1e-3]).toEqual([joint.id, post, true]);
    }
  });

  it('has every group hung at all its corners: a pin and a nut through each joint and its post alone', () => {
    const joints = model.parts.filter((part) => part.kind === 'joint').map((part) => part.id);
    const pinned = heldTogether(model).filter(({ parts }) => parts.some((id) => id.startsWith('post-')));
    expect(pinned.flatMap(({ parts }) => parts.filter((id) => joints.includes(id))).sort()).toEqual([...joints].sort());
    for (const { by, parts } of pinned) {
      expect([by, throughs(model, partOf(model, by))]).toEqual([by, parts.filter((id) => !id.startsWith('wing-nut-')).sort()]);
    }
  });

  it('has every wing nut on its pin, tight against what the pin goes through, with the pin\'s end in it', () => {
    const nutted = heldTogether(model).flatMap(({ by, parts }) => parts.filter((id) => id.startsWith('wing-nut-')).map((nut) => ({ by, nut, held: parts.filter((id) => id !== nut && !id.startsWith('post-')) })));
    expect(nutted.map(({ nut }) => nut).sort()).toEqual(model.parts.filter((part) => part.kind === 'wing-nut').map((part) => part.id).sort());
    for (const { by, nut, held } of nutted) {
      const pin = partOf(model, by);
      const onPin = (id: string) => chained(undone(pin.pose), partOf(model, id).pose);
      const [x, y, z] = placed(onPin(nut), [0, 0, 0]);
      expect([by, Math.hypot(x, y) < 1e-6]).toEqual([by, true]);
      // The farther side of a tube, or of the sleeve of a joint, of which a box would show the sockets.
      const far = Math.min(...held.map((id) => (partOf(model, id).kind === 'joint'
        ? -model.kit.joint.sleeveDiameter : solids.box({ shape: partOf(model, id).shape, pose: onPin(id) }).min[2])));
      expect([by, Math.abs(z - far) < 0.1]).toEqual([by, true]);
      expect(pin.shape.form === 'pin' && pin.shape.length).toBeGreaterThan(-z);
    }
  });

  it('counts all its tubes among those to saw, and all its plates among those to cut', () => {
    const lengths = model.parts.flatMap((part) => (part.shape.form === 'tube' ? [part.shape.length] : []));
    expect(model.tubes.flatMap(({ length, count }) => Array.from({ length: count }, () => length)).sort()).toEqual([...lengths].sort());
    expect(model.plates.flatMap(({ partIds }) => partIds).sort()).toEqual(model.parts.filter((part) => part.kind === 'flat-panel').map((part) => part.id).sort());
  });
});

describe.each(partSizes.filter(({ item }) => item.pieces.some((piece) => piece.is === 'panel')))('the plates of the $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const plates = model.parts.filter((part) => part.kind === 'flat-panel');
  const joiningsOf = (plate: Part) => heldTogether(model).filter(({ parts }) => parts.includes(plate.id));

  it('are there for every side that the file asks for', () => {
    const wanted = item.pieces.flatMap((piece) => (piece.is === 'panel' ? piece.on.map((face) => `${piece.name}-${face}`) : []));
    expect(plates.map((plate) => plate.id).sort()).toEqual(wanted.sort());
  });

  it('have pins through plate and one tube and through nothing else, each in a hole of both', () => {
    for (const plate of plates) {
      expect(joiningsOf(plate).length).toBeGreaterThanOrEqual(4);
      for (const { by, parts } of joiningsOf(plate)) {
        const [tube = '', ...others] = parts.filter((id) => id.includes('-tube-'));
        expect(others).toEqual([]);
        expect([by, throughs(model, partOf(model, by))]).toEqual([by, [plate.id, tube].sort()]);
        // From the head down the shank: all the plate, then both walls of the tube, then out.
        const { shape, pose } = partOf(model, by);
        const { min, max } = solids.box({ shape: partOf(model, tube).shape, pose: chained(undone(pose), partOf(model, tube).pose) });
        const { kit } = model;
        expect(max[2]).toBeCloseTo(-kit.panel.thickness - 0.05, 2);
        expect(max[2] - min[2]).toBeGreaterThan(kit.tube.outsideDiameter * 0.98);
        expect(shape.form === 'pin' && shape.length + min[2] > kit.jointPin.nutHeight * 0.6).toBe(true);
      }
    }
  });

  it('have as many holes as pins, and so have the tubes they are pinned to', () => {
    const holes = (part: Part): number => (part.shape.form === 'tube' || part.shape.form === 'plate' ? part.shape.holes.length : 0);
    for (const plate of plates) expect(holes(plate)).toBe(joiningsOf(plate).length);
    const pinned = plates.flatMap((plate) => joiningsOf(plate).flatMap(({ parts }) => parts.filter((id) => id.includes('-tube-'))));
    for (const part of model.parts.filter((each) => each.kind === 'long-tube' || each.kind === 'short-tube')) {
      expect([part.id, holes(part)]).toEqual([part.id, pinned.filter((id) => id === part.id).length]);
    }
  });

  it('lie flat on the inner side of their tubes: a hair further out and they would run into them', () => {
    for (const plate of plates) {
      const tubes = [...new Set(joiningsOf(plate).flatMap(({ parts }) => parts.filter((id) => id.includes('-tube-'))))];
      expect(tubes).toHaveLength(2);
      for (const id of tubes) {
        const nearer = { shape: plate.shape, pose: chained(plate.pose, moved([0, 0, -1])) };
        expect([plate.id, id, solids.overlap(nearer, partOf(model, id)) > TOUCH]).toEqual([plate.id, id, true]);
      }
      const [x, y] = placed(plate.pose, [0, 0, 0]);
      const [tx, ty] = placed(partOf(model, tubes[0] ?? '').pose, [0, 0, 0]);
      expect(Math.hypot(x, y)).toBeLessThan(Math.hypot(tx, ty));
    }
  });

  it('are listed to cut with the holes where the model has them', () => {
    for (const cut of model.plates) {
      for (const id of cut.partIds) {
        const { shape } = partOf(model, id);
        if (shape.form !== 'plate') throw new Error(`${id} is no plate`);
        expect([shape.width, shape.height]).toEqual([cut.width, cut.height]);
        const listed = cut.holes.map(({ at: [x, y], diameter }) => `${(x - cut.width / 2).toFixed(6)} ${(y - cut.height / 2).toFixed(6)} ${diameter}`);
        expect(listed.sort()).toEqual(shape.holes.map(({ at: [x, y], diameter }) => `${x.toFixed(6)} ${y.toFixed(6)} ${diameter}`).sort());
      }
    }
  });
});
