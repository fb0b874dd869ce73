import { describe, expect, it } from 'vitest';
import { dot, jointPorts, minus, placed, type Model, type Vec3 } from '../../src/model/index.ts';
import type { Plan } from '../../src/plan/index.ts';
import { plumbOf, plumbRange, type Plumb, type PlumbSide, type SceneBody } from '../../src/scene/index.ts';
import { boxRound } from '../../src/scene/kit/extent.ts';
import { remembered } from '../support/remembered.ts';
import { modelOf } from '../support/items.ts';
import { workSizes } from '../support/chosen.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

interface Looked {
  readonly model: Model;
  readonly plan: Plan;
  readonly plumbs: readonly { readonly number: number; readonly plumb: Plumb }[];
}

const looked = remembered(({ item, size }: typeof workSizes[number]): Looked => {
  const [model, plan] = [modelOf(item, size), planOf(item, size)];
  const plumbs = plan.steps.flatMap((step) => {
    const plumb = plumbOf(model, plan, step, solids);
    return plumb === null ? [] : [{ number: step.number, plumb }];
  });
  return { model, plan, plumbs };
});

/** Places on the faces of bodies near a string, so far out from the leg's axis and aside of the string, and so high. */
function placesBeside(bodies: readonly SceneBody[], { leg }: Plumb, { out }: PlumbSide): readonly { readonly out: number; readonly aside: number; readonly up: number }[] {
  const across: Vec3 = [-out[1], out[0], 0];
  const told = (place: Vec3) => ({ out: dot(minus(place, leg.at), out), aside: dot(minus(place, leg.at), across), up: place[2] });
  const near = bodies.filter((body) => {
    const { min, max } = boxRound([body]);
    const [one, other] = [told(min), told(max)];
    return Math.min(Math.abs(one.aside), Math.abs(other.aside)) < 60 || one.aside * other.aside < 0;
  });
  return near.flatMap(({ mesh: { positions, triangles }, pose }) => {
    const corner = (index: number): Vec3 => placed(pose, [0, 1, 2].map((axis) => positions[3 * (triangles[index] ?? 0) + axis] ?? NaN) as unknown as Vec3);
    return Array.from({ length: triangles.length / 3 }, (_, face) => [0, 1, 2].map((at) => corner(3 * face + at))).flatMap((ring) =>
      SHARES.map((shares) => told([0, 1, 2].map((axis) => ring.reduce((sum, each, at) => sum + (each[axis as 0]) * (shares[at] ?? 0), 0)) as unknown as Vec3)));
  });
}

/** Places all over a triangle, as shares of its corners. */
const PARTS = 5;
const SHARES = Array.from({ length: PARTS + 1 }, (_, one) => Array.from({ length: PARTS + 1 - one }, (__, other) => [one / PARTS, other / PARTS, (PARTS - one - other) / PARTS])).flat();

describe('how far a string may be from a leg below', () => {
  // 1/200 of the height is also the global initial sway of EN 1993-1-1, 5.3.2 (M); as a limit for this it is common practice, no source.
  it('is a two-hundredth of the height between, more or less, and never less than 2 mm', () => {
    expect([250, 600, 1500].map((height) => plumbRange(40, height))).toEqual([[38, 42], [37, 43], [32, 48]]);
  });
});

describe.each(workSizes)('the plumb line of $name', (size) => {
  const { model, plan, plumbs } = looked(size);
  const stands = plan.steps.find(({ action }) => action === 'stand-up');
  const cords = plan.steps.filter(({ newParts }) => newParts.some(({ kind }) => kind === 'cable'));

  it('is looked at when the work stands, and again when the last cord is tied; not where there are no cords to draw it plumb', () => {
    const last = cords.at(-1);
    const expected = stands === undefined || last === undefined ? [] : [{ number: stands.number, is: 'first' }, { number: last.number, is: 'again' }];
    expect(plumbs.map(({ number, plumb: { is } }) => ({ number, is }))).toEqual(expected);
    expect(plumbs.map(({ plumb: { step } }) => step)).toEqual(plumbs.map(() => stands?.number));
  });

  it('is beside one upright leg at a corner, the same both times, on two sides square to each other or on one in whose plane there are cords, seen from where the leg is before all others', () => {
    expect(new Set(plumbs.map(({ plumb: { leg } }) => leg.id)).size).toBe(plumbs.length === 0 ? 0 : 1);
    for (const { plumb } of plumbs) {
      const [one, other] = plumb.sides;
      if (other === undefined) {
        const { cords } = plumb.held;
        expect(cords.length).toBeGreaterThan(0);
        for (const [from, to] of cords) expect(Math.abs(dot(one.out, [to[0] - from[0], to[1] - from[1], 0]))).toBeCloseTo(Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
      }
      expect([dot(one.out, other?.out ?? [0, 0, 0]), one.out[2], other?.out[2] ?? 0].map((each) => each + 0)).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 6), expect.closeTo(0, 6)]);
      const leg = plumb.bodies.filter(({ look }) => look === 'new');
      expect(leg.map(({ partId }) => partId)).toEqual([plumb.leg.id]);
      for (const { view, out } of plumb.sides) {
        expect(dot(view.towardsEye, out)).toBeCloseTo(0, 6);
        const depths = plumb.bodies.filter(({ kind }) => kind === 'post' || kind === 'bar').map((body) => ({ id: body.partId, depth: dot(placed(body.pose, [0, 0, 0]), view.towardsEye) }));
        const own = depths.find(({ id }) => id === plumb.leg.id)?.depth ?? NaN;
        const uprights = depths.filter(({ id }) => model.parts.some((part) => part.id === id && part.shape.form === 'tube' && Math.abs(part.pose[2] ?? 0) > 0.999));
        expect(Math.max(...uprights.map(({ depth }) => depth)) - own).toBeLessThan(1);
      }
    }
  });

  it('hangs clear of all that stands out beside it, over its weight too, and is measured twice from one face', () => {
    for (const { plumb } of plumbs) {
      const faces = new Set(model.parts.flatMap(({ shape }) => [...(shape.form === 'tube' ? [shape.outside / 2] : []), ...[jointPorts(shape)?.outside ?? []].flat().map((each) => each / 2)]));
      for (const side of plumb.sides) {
        const string = side.face + side.off;
        const places = placesBeside(plumb.bodies, plumb, side);
        const struck = places.filter(({ out, aside, up }) => Math.abs(aside) < 8 && up > side.low && up < plumb.top + 1 && out > string - 10 && out < string + 10);
        expect(struck).toEqual([]);
        expect(Math.min(...[...faces].map((face) => Math.abs(face - side.face)))).toBeLessThan(0.6);
        expect([side.off % 10, side.off >= 30, side.range]).toEqual([0, true, plumbRange(side.off, side.upper - side.lower)]);
        expect([side.upper < plumb.top, side.lower > side.low, side.upper - side.lower > (plumb.top - plumb.floor) / 3]).toEqual([true, true, true]);
      }
    }
  });

  it('is held by the cords that are tied after it', () => {
    for (const { plumb: { held } } of plumbs) expect([held.steps, held.cords.length]).toEqual([cords.map(({ number }) => number), model.parts.filter(({ kind }) => kind === 'cable').length]);
  });
});

describe('the straightedge', () => {
  it.each(workSizes)('of $name lies on the leg: nothing is higher where it lies', (size) => {
    for (const { plumb } of looked(size).plumbs) {
      for (const side of plumb.sides) {
        const under = placesBeside(plumb.bodies, plumb, side).filter(({ out, aside }) => out > -40 && out < side.face + side.off && Math.abs(aside) < 6);
        expect(Math.max(...under.map(({ up }) => up))).toBeLessThan(plumb.top + 0.1);
      }
    }
  });
});
