import { describe, expect, it } from 'vitest';
import { BOTTLE, bottleSize } from '../../../src/draw/flat/cable/bottle.ts';
import { bayOf, crossedCords, faceIn, shownCord } from '../../../src/draw/flat/cable/face.ts';
import { doesLie, ladenFace, massHung, sagAtCrossing } from '../../../src/draw/flat/cable/hung-mass.ts';
import { tryingMarks, tyingReminderMarks } from '../../../src/draw/flat/cable/knot-series.ts';
import { pegsMarks } from '../../../src/draw/flat/cable/pegs.ts';
import { slungBottle } from '../../../src/draw/flat/cable/slung-bottle.ts';
import type { CableCut } from '../../../src/draw/flat/cable/cut-picture.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { toPicture } from '../../../src/draw/kit/svg.ts';
import { bracedFace, cableEnds, cableLoop, cableTest, placed, TAUT, type BracedFace, type Model, type Vec2 } from '../../../src/model/index.ts';
import { allSizes } from '../../support/all-items.ts';
import { linesOf, outside, overlaps, pointsOutside, struckFigures } from './inspect.ts';

interface Braced {
  readonly name: string;
  readonly model: Model;
  readonly cables: readonly string[];
  readonly face: BracedFace;
}

/** Every braced face of every size of every item: the cables that are hung along one way out. */
const faces: readonly Braced[] = allSizes.flatMap(({ name, model: make }) => {
  const model = make();
  const byWay = new Map<string, Set<string>>();
  for (const each of model.connections) {
    if (each.is !== 'hook') continue;
    const way = each.out.map(Math.round).join(' ');
    byWay.set(way, (byWay.get(way) ?? new Set()).add(each.cable));
  }
  return [...byWay].map(([way, cables]) => ({ name: `${name}, ${way}`, model, cables: [...cables], face: bracedFace(model, [...cables]) }));
});

const box = { x: 0, y: 0, width: 66, height: 62 };
const apart = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Points of all that a bottle is drawn with: its water is tinted, and so is the cord, which is a line. */
const bottlePoints = (marks: readonly Mark[]): readonly Vec2[] => marks.flatMap((mark) => (mark.mark === 'area' && mark.fill === 'fresh' ? mark.rings.flat() : []));

describe('the face that cords brace', () => {
  it('is found in every item that has cords', () => {
    expect(faces.length).toBeGreaterThan(30);
  });

  it.each(faces)('has the cords as long as they are, between bars that stand under the pegs, two and two crossed: $name', ({ model, cables, face }) => {
    const lengths = model.parts.flatMap(({ id, shape }) => (shape.form === 'cable' && cables.includes(id) ? [shape.length] : [])).toSorted((a, b) => a - b);
    for (const [index, drawn] of face.cords.map(({ low, high }) => apart(low, high)).toSorted((a, b) => a - b).entries()) expect(drawn).toBeCloseTo(lengths[index] ?? NaN, 0);
    expect(crossedCords(face)).toHaveLength(cables.length / 2);
    const standsUnder = ([x, y]: Vec2): boolean => face.bars.some(({ from, to, outside: wide }) => Math.abs(from[0] - x) < wide && Math.abs(to[0] - x) < wide && Math.min(from[1], to[1]) < y);
    for (const { low, high } of face.cords) expect([low, high].map(standsUnder)).toEqual([true, true]);
  });

  it('is seen from outside: a cord of the left side runs the other way than seen from the right', () => {
    for (const { model, cables, face } of faces) {
      const seen = cables.flatMap((id) => model.parts.filter((part) => part.id === id)).flatMap(({ shape, pose }) => (shape.form === 'cable' ? [placed(pose, [0, 0, 0])] : []));
      const hook = model.connections.find((each) => each.is === 'hook' && cables.includes(each.cable));
      if (hook?.is !== 'hook') throw new Error('no hook');
      // Right hand of one who looks against the way out, z up: the back is seen with the item's own right on the left.
      const right = ([x, y]: readonly [number, number, number]): number => -x * hook.out[1] + y * hook.out[0];
      const ends = face.cords.flatMap(({ low, high }) => [low[0], high[0]]);
      for (const at of seen) expect(Math.min(...ends.map((end) => Math.abs(end - right(at))))).toBeLessThan(0.01);
    }
  });

  it('has no cable that is not hung', () => {
    expect(() => bracedFace(faces[0]?.model ?? ({} as Model), ['no such cable'])).toThrow(RangeError);
  });
});

describe.each(faces)('the cords of $name', ({ model, face }) => {
  const [crossing] = crossedCords(face);

  it('stand on paper in their own proportions', () => {
    const drawn = faceIn(face, box);
    for (const { low, high } of face.cords) {
      const [from, to] = [drawn.at(low), drawn.at(high)];
      expect((from[1] - to[1]) / (to[0] - from[0])).toBeCloseTo((high[1] - low[1]) / (high[0] - low[0]), 9);
    }
  });

  it.each([0, 1] as const)('are laden one by one where they cross (%i): what was before is dashed and straight from peg to peg, the bottle hangs free of the floor', (which) => {
    for (const size of [box, { ...box, width: 27.7, height: 50 }]) {
      const marks = ladenFace(face, which, size);
      const drawn = faceIn(bayOf(face), size);
      const cord = crossing?.cords[which];
      if (crossing === undefined || cord === undefined) throw new Error('no crossing');
      const [x, y] = drawn.at(crossing.at);
      const dashed = linesOf(marks).filter(({ pen }) => pen.type === 'dashed').map(({ points }) => points);
      expect(dashed).toEqual([[drawn.at(cord.low), drawn.at(cord.high)]]);
      const tinted = linesOf(marks).filter(({ pen }) => pen.colour === 'fresh').map(({ points }) => points);
      expect(tinted).toEqual([[drawn.at(cord.low), [x, expect.any(Number)], drawn.at(cord.high)]]);
      expect(tinted[0]?.[1]?.[1]).toBeGreaterThan(y);
      const water = bottlePoints(marks);
      const [left, right] = [Math.min(...water.map((at) => at[0])), Math.max(...water.map((at) => at[0]))];
      expect(left).toBeLessThan(x);
      expect(right).toBeGreaterThan(x);
      expect(Math.max(...water.map((at) => at[1]))).toBeLessThan(drawn.at([0, 0])[1] - 0.2);
    }
    // A bottle that hangs by its neck has its own length under the crossing, and a hand's breadth.
    if (!doesLie(face)) expect(crossing?.at[1]).toBeGreaterThan(BOTTLE.long + 100);
    else expect(crossing?.at[1]).toBeGreaterThan(BOTTLE.wide + 60);
  });

  it('bear a bottle that touches no bar where its sling is short: beside the posts, and clear of each bar along it', () => {
    if (crossing === undefined) throw new Error('no crossing');
    const mass = massHung(face);
    const { long, wide } = bottleSize(mass);
    if (!doesLie(face)) return expect(mass).toBe(1);
    const [{ low, high }] = crossing.cords;
    const level = face.bars.filter(({ from, to }) => Math.abs(from[1] - to[1]) < 1);
    const thick = Math.max(...face.bars.map(({ outside: each }) => each));
    expect(Math.abs(high[0] - low[0]) - thick).toBeGreaterThan(long);
    // Its axis in the plane of the cords, which are on the pegs so far before the bars; a sling of a finger's breadth.
    const axis = crossing.at[1] - 15 - wide / 2;
    const before = model.kit.joint.studReach - model.kit.joint.studHead - model.kit.cable.diameter;
    for (const { from, outside: each } of level) expect(Math.hypot(axis - from[1], before)).toBeGreaterThan((wide + each) / 2);
    expect(axis - wide / 2).toBeGreaterThan(0);
  });

  it('are drawn as taut as the least pull where the bottle comes down by the limit: a load amid a string (common statics, from memory: T = F l / 4 s)', () => {
    for (const { low, high } of face.cords) {
      const { mass, most } = cableTest(apart(low, high), massHung(face));
      expect((mass * 9.80665 * apart(low, high)) / (4 * most)).toBeGreaterThan(TAUT - 0.5);
    }
  });

  it.each([FORMATS.page.bench, FORMATS.small.bench])('keep labels apart, on the paper and free of lines, on paper of $width by $height', ({ width }) => {
    const [cord] = face.cords;
    const length = cord === undefined ? NaN : apart(cord.low, cord.high);
    const cable: CableCut = { count: 2, ...cableEnds(length), loop: cableLoop(model), test: cableTest(length, massHung(face)), face };
    for (const { marks, height } of [...tryingMarks(cable, width), { marks: tyingReminderMarks(cable, 36, width), height: 78 }, { marks: pegsMarks(cable, width), height: 50 }]) {
      const picture = toPicture({ width, height }, marks);
      expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks)]).toEqual([[], [], [], []]);
    }
  });

  it.each([FORMATS.page.bench, FORMATS.small.bench])('have the limit’s figure beside the rings, not on them, on paper of $width by $height', ({ width }) => {
    const cable: CableCut = { count: 2, ...cableEnds(1680), loop: cableLoop(model), test: cableTest(1680), face };
    for (const { marks, height } of [...tryingMarks(cable, width), { marks: tyingReminderMarks(cable, 36, width), height: 78 }]) {
      const { labels } = toPicture({ width, height }, marks.filter(({ mark }) => mark === 'figure'));
      const rings = marks.flatMap((mark) => (mark.mark === 'circle' && mark.radius > 10 ? [mark] : []));
      const nearest = (from: number, far: number, to: number): number => Math.min(Math.max(to, from), from + far);
      const touched = rings.flatMap(({ centre, radius }) => labels.filter(({ x, y, width: wide, height: high }) => apart(centre, [nearest(x, wide, centre[0]), nearest(y, high, centre[1])]) < radius));
      expect(touched).toEqual([]);
    }
  });

  it('are shown by the one that comes down to the right, wherever one alone is drawn', () => {
    const { low, high } = shownCord(face) ?? { low: [NaN, NaN], high: [NaN, NaN] };
    expect(low[0]).toBeGreaterThan(high[0]);
    expect(low[1]).toBeLessThan(high[1]);
  });

  it('bear a bottle on a piece of cord that goes over one of them and round the bottle, upright or lying as it hangs in the face', () => {
    const marks = slungBottle(face)([50, 50]);
    const water = bottlePoints(marks);
    const [wide, high] = [0, 1].map((axis) => Math.max(...water.map((at) => at[axis] ?? NaN)) - Math.min(...water.map((at) => at[axis] ?? NaN))) as [number, number];
    expect(wide > high).toBe(doesLie(face));
    const laden = linesOf(marks).find(({ pen }) => pen.colour === 'fresh')?.points ?? [];
    const lowest = Math.max(...laden.slice(1, -1).map(([, y]) => y));
    // Its two sides begin over the laden cord and end on the bottle.
    const sides = linesOf(marks).filter(({ pen, points }) => pen.colour === 'white' && points.length > 4 && (points[0]?.[1] ?? NaN) < lowest);
    expect(sides).toHaveLength(2);
    for (const { points } of sides) expect(points.at(-1)?.[1]).toBeGreaterThan(lowest + 8);
  });

  it('give way within the limit where they are taut, and beyond it where they are drawn again', () => {
    const test = { mass: 1, most: 10 };
    const read = (isTaut: boolean) => {
      const lines = linesOf(sagAtCrossing(face, test, { isTaut, by: 1 })([0, 0]));
      const cord = lines.find(({ pen }) => pen.colour === 'fresh')?.points ?? [];
      const [from, to] = lines.find(({ pen }) => pen.type === 'dashed')?.points ?? [];
      const upright = lines.find(({ points: [a, b], pen }) => pen.name === 'dimension' && a !== undefined && b !== undefined && a[0] === b[0])?.points ?? [];
      return { tip: cord[1] ?? [NaN, NaN], before: from === undefined || to === undefined ? NaN : from[1] + ((to[1] - from[1]) * (0 - from[0])) / (to[0] - from[0]), zero: upright[0]?.[1], limit: upright[1]?.[1] ?? NaN };
    };
    const [taut, slack] = [read(true), read(false)];
    for (const each of [taut, slack]) expect(each.before).toBeCloseTo(each.zero ?? NaN, 6);
    expect(taut.tip[1]).toBeLessThan(taut.limit);
    expect(taut.tip[1]).toBeGreaterThan(taut.zero ?? NaN);
    expect(slack.tip[1]).toBeGreaterThan(slack.limit);
  });
});
