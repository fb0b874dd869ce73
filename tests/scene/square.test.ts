import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../src/draw/lines/index.ts';
import type { LineDrawer } from '../../src/draw/picture/index.ts';
import { squareMarks } from '../../src/draw/picture/square.ts';
import { stepPictures } from '../../src/draw/index.ts';
import type { Mark } from '../../src/draw/kit/marks.ts';
import { chained, dot, lengthOf, minus, placed, type Vec2, type Vec3 } from '../../src/model/index.ts';
import { squareOf, turnedBy } from '../../src/scene/index.ts';
import { everySize, itemNamed, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { figureFaults, labelFaults } from '../support/pictures.ts';
import { cutsOnce, planOf } from '../support/plans.ts';
import { workSizes } from '../support/chosen.ts';

const never = (): never => { throw new Error('not there'); };

const drawn: LineDrawer = (bodies, view) => lineDrawing(bodies, view);

const solids = await sharedSolids();

/** Steps that drill sleeves onto two posts or more from over them: in these the shape of a side is fixed. */
function sidesFixed(item: (typeof everySize)[number]['item'], size: string) {
  const model = modelOf(item, size);
  const fixing = planOf(item, size).steps.filter((step) => {
    const pins = model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? [each] : []));
    const posts = new Set(model.connections.flatMap((each) => (each.is === 'sleeve' && pins.some(({ holds }) => holds.includes(each.bar) && holds.includes(each.joint)) ? [each.bar] : [])));
    const isFromAbove = pins.every(({ pin }) => turnedBy(chained(step.standing.pose, model.parts.find(({ id }) => id === pin)?.pose ?? never()), [0, 0, 1])[2] > 0.9);
    return posts.size > 1 && isFromAbove;
  });
  return fixing.map((step) => ({ model, step }));
}

const minus2 = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];

const figures = (marks: readonly Mark[]): readonly number[] => marks.flatMap((mark) => {
  if (mark.mark === 'placed') return figures(mark.marks);
  return mark.mark === 'figure' && mark.told.as === 'length' ? [mark.told.mm] : [];
});

describe('a side that is drilled as it lies', () => {
  it.each(workSizes)('is measured across both ways before, of the $name', ({ item, size }) => {
    for (const { model, step } of sidesFixed(item, size)) {
      const square = squareOf(model, step, solids);
      if (square === null) return never();
      const [first, second, third, last] = square.corners;
      const sides: readonly Vec3[] = [minus(second, first), minus(third, second), minus(last, third), minus(first, last)];
      expect(lengthOf(minus(third, first))).toBeCloseTo(square.diagonal, 6);
      expect(Math.abs(lengthOf(minus(last, second)) - square.diagonal)).toBeLessThan(1);
      expect(sides.every((side) => lengthOf(side) > 100)).toBe(true);
      for (const [index, side] of sides.entries()) expect(Math.abs(dot(side, sides[(index + 1) % 4] ?? side)) / lengthOf(side)).toBeLessThan(1);
      expect(square.over.towardsEye[2]).toBeGreaterThan(0.9);
      // As much as the diagonals may differ, the posts lean by no more than a two-hundredth, or by what a tape shows of 2 mm: the cosine rule.
      const [along, across] = [lengthOf(sides[0] ?? first), lengthOf(sides[1] ?? first)];
      const leans = (angle: number): number => Math.sqrt(along ** 2 + across ** 2 + 2 * along * across * Math.sin(angle)) - Math.sqrt(along ** 2 + across ** 2 - 2 * along * across * Math.sin(angle));
      expect(Number.isInteger(square.unequal)).toBe(true);
      expect(square.unequal).toBeLessThanOrEqual(Math.max(2, leans(1 / 200)));
      expect(square.unequal).toBeGreaterThan(leans(1 / 200) - 1.01);
    }
  });

  it.each(workSizes)('is a picture of its own before the one of the drilling, with nothing over anything, of the $name', async ({ item, size }) => {
    for (const { model, step } of sidesFixed(item, size)) {
      const pictures = stepPictures({ model, plan: planOf(item, size), cuts: await cutsOnce(model), solids, draw: (bodies, view) => lineDrawing(bodies, view) }, step);
      const told = `>${Math.round(squareOf(model, step, solids)?.diagonal ?? never())}<`;
      const place = pictures.findIndex(({ svg }) => svg.includes(told));
      expect(pictures[place]?.newPartShares ?? {}).toEqual({});
      expect(pictures[place + 1]?.svg).toContain('>Ø6<');
      for (const picture of pictures.slice(0, place + 2)) expect([...labelFaults(picture), ...figureFaults(picture)]).toEqual([]);
    }
  });

  it('is as long from corner to corner as a rack’s decks, sleeves and posts make it', () => {
    const item = itemNamed('rack');
    const sides = sidesFixed(item, 'standard');
    expect(sides).toHaveLength(2);
    for (const { model, step } of sides) {
      const { joint } = model.kit;
      const posts = model.parts.filter(({ kind }) => kind === 'post').map(({ pose }) => placed(pose, [0, 0, 0]));
      const decks = [...new Set(model.parts.filter(({ kind }) => kind === 'joint').map(({ pose }) => Math.round(placed(pose, [0, 0, 0])[2])))];
      const across = Math.max(...posts.map(([x]) => x)) - Math.min(...posts.map(([x]) => x)) + joint.sleeveDiameter;
      const along = Math.max(...decks) - Math.min(...decks) + joint.sleeveAbove + joint.sleeveBelow;
      expect(squareOf(model, step, solids)?.diagonal).toBeCloseTo(Math.hypot(across, along), 0);
    }
  });

  it('tells about how long the first diagonal is, and of both only by how much they may differ', () => {
    const { model, step } = sidesFixed(itemNamed('chair'), 'mark-2')[0] ?? never();
    const square = squareOf(model, step, solids) ?? never();
    expect(figures(squareMarks(square, 165, drawn).marks)).toEqual([Math.round(square.diagonal), square.unequal, square.unequal]);
  });

  it('shows enlarged at two opposite corners where the tape is hooked and where it is read: at the places that are measured between', () => {
    const { model, step } = sidesFixed(itemNamed('rack'), 'standard')[0] ?? never();
    const { marks } = squareMarks(squareOf(model, step, solids) ?? never(), 165, drawn);
    const rings = marks.flatMap((mark) => (mark.mark === 'circle' ? [mark] : []));
    const ends = rings.filter(({ fill }) => fill === 'ink').map(({ centre }) => centre);
    const smalls = rings.filter(({ pen }) => pen?.name === 'detail');
    const bigs = rings.filter(({ pen }) => pen?.name === 'enlarged');
    expect([smalls.length, bigs.length]).toEqual([2, 2]);
    for (const small of smalls) expect(ends.filter(([x, y]) => Math.hypot(x - small.centre[0], y - small.centre[1]) < 1e-6)).toHaveLength(1);
    for (const big of bigs) expect(big.radius).toBeGreaterThan(20);
    // The hook, a short thick line, is in one of the large rings, and lies across the way to the opposite corner.
    const hooks = marks.flatMap((mark) => (mark.mark === 'line' && mark.pen.width > 1.5 && bigs.some((big) => mark.points.every(([x, y]) => Math.hypot(x - big.centre[0], y - big.centre[1]) < big.radius)) ? [mark.points] : []));
    expect(hooks).toHaveLength(1);
    const [[from, to] = []] = hooks;
    const way = minus2(to ?? never(), from ?? never());
    // The side is seen aslant where its corners are ringed: its diagonals are those between the dots of the one that is seen level.
    const diagonals = ends.flatMap((one, index) => ends.slice(index + 1).map((other) => minus2(other, one))).filter((each) => Math.hypot(...each) > 20);
    expect(diagonals.some(([x, y]) => Math.abs(x * way[0] + y * way[1]) < 0.02 * Math.hypot(x, y) * Math.hypot(...way))).toBe(true);
  });

  it('is not measured where a panel is drilled, or one post alone', () => {
    const [chair, screen] = ([['chair', 'mark-2'], ['screen', 'low']] as const).map(([name, size]) => ({ model: modelOf(itemNamed(name), size), plan: planOf(itemNamed(name), size) }));
    const others = [chair ?? never(), screen ?? never()].flatMap(({ model, plan }) => plan.steps.filter(({ action, detail }) => action === 'drill' && (detail.on === 'plate' || model === screen?.model)).map((step) => squareOf(model, step, solids)));
    expect(others.length).toBeGreaterThan(2);
    expect(others.every((each) => each === null)).toBe(true);
  });
});
