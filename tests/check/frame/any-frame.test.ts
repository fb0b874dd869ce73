import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveFrame, type Frame, type FrameResult, type Member } from '../../../src/check/frame/index.ts';
import { all, bar, frameOf, hold, pinned, push, shiftOf, type Place } from './frames.ts';

const section = { EA: 3.2e6, EIy: 1.6e8, EIz: 2.4e8, GJ: 6e7 };
const amount = (most: number): fc.Arbitrary<number> => fc.double({ min: -most, max: most, noNaN: true });
const place = (most: number): fc.Arbitrary<Place> => fc.tuple(amount(most), amount(most), amount(most));

/** Places a real distance apart: a grid of 300 mm with up to 100 mm of wobble. */
const spot = (index: number): fc.Arbitrary<Place> =>
  place(100).map(([x, y, z]): Place => [(index % 2) * 300 + x, Math.floor(index / 2) * 300 + y, ((index * 7) % 3) * 300 + z]);

/** A chain of stiffly joined bars from a fixed node, braced by more bars with some pinned ends, all loaded anyhow. */
const anyFrame: fc.Arbitrary<Frame> = fc.integer({ min: 3, max: 7 }).chain((count) => fc.record({
  places: fc.tuple(...Array.from({ length: count }, (_, index) => spot(index))),
  ups: fc.array(place(1).filter(([x, y, z]) => Math.hypot(x, y, z) > 0.3), { minLength: count, maxLength: count }),
  braces: fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1), fc.boolean()), { maxLength: 4 }),
  loads: fc.array(fc.tuple(fc.nat(count - 1), place(80), place(9000)), { minLength: 1, maxLength: 4 }),
  lines: fc.array(fc.tuple(fc.nat(count - 2), place(0.3)), { maxLength: 3 }),
  propped: fc.boolean(),
}).map(({ places, ups, braces, loads, lines, propped }): Frame => {
  const name = (index: number): string => `n${index}`;
  const chain = places.slice(1).map((at, index): Member => {
    const from = places[index] ?? at;
    const span = [at[0] - from[0], at[1] - from[1], at[2] - from[2]] as const;
    const up = ups[index] ?? [0, 0, 1];
    const along = Math.abs(span[0] * up[0] + span[1] * up[1] + span[2] * up[2]) / Math.hypot(...span) / Math.hypot(...up);
    return bar(name(index), name(index + 1), section, along < 0.95 ? { up } : {});
  });
  return frameOf(Object.fromEntries(places.map((at, index): [string, Place] => [name(index), at])), {
    members: [...chain, ...braces.filter(([a, b]) => a !== b).map(([a, b, isPinned], index): Member => ({
      ...bar(name(a), name(b), section), name: `brace ${index}`,
      ...(isPinned ? { released: { from: ['ry', 'rz'], to: ['rx', 'ry', 'rz'] } } : {}),
    }))],
    supports: [hold('n0', all), ...(propped ? [hold(name(places.length - 1), pinned)] : [])],
    nodeLoads: loads.map(([node, force, moment]) => push(name(node), force, moment)),
    lineLoads: lines.map(([index, perLength]) => ({ member: `n${index}-n${index + 1}`, perLength })),
  });
}));

const cross = (a: Place, b: Place): Place => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const plus = (a: Place, b: Place): Place => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const atOf = (frame: Frame, name: string): Place => frame.nodes.find((node) => node.name === name)?.at ?? [NaN, NaN, NaN];

/** Force and moment about the origin of everything that acts on the frame from outside. */
function outside(frame: Frame, result: FrameResult): { readonly force: Place; readonly moment: Place } {
  const acts = [
    ...frame.nodeLoads.map(({ node, force = [0, 0, 0], moment = [0, 0, 0] }) => ({ at: atOf(frame, node), force, moment })),
    ...frame.lineLoads.map(({ member, perLength }) => {
      const { from, to } = frame.members.find(({ name }) => name === member) ?? { from: '', to: '' };
      const [a, b] = [atOf(frame, from), atOf(frame, to)];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
      const at: Place = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
      return { at, force: [perLength[0] * length, perLength[1] * length, perLength[2] * length] as Place, moment: [0, 0, 0] as Place };
    }),
    ...Object.entries(result.reactions).map(([node, [x, y, z, rx, ry, rz]]) =>
      ({ at: atOf(frame, node), force: [x, y, z] as Place, moment: [rx, ry, rz] as Place })),
  ];
  return acts.reduce((sum, { at, force, moment }) => ({
    force: plus(sum.force, force), moment: plus(sum.moment, plus(moment, cross(at, force))),
  }), { force: [0, 0, 0] as Place, moment: [0, 0, 0] as Place });
}

describe('any frame', () => {
  it('its reactions balance its loads, force and moment', () => {
    fc.assert(fc.property(anyFrame, (frame) => {
      const { force, moment } = outside(frame, solveFrame(frame));
      force.forEach((value) => { expect(Math.abs(value)).toBeLessThan(1e-5); });
      moment.forEach((value) => { expect(Math.abs(value)).toBeLessThan(1e-2); });
    }), { numRuns: 150 });
  });

  it('gives as much at B for a load at A as at A for the load at B (Maxwell and Betti)', () => {
    const sides = fc.tuple(fc.nat(5), fc.nat(5));
    fc.assert(fc.property(anyFrame, sides, (frame, [i, j]) => {
      const [a, b] = ['n1', frame.nodes.at(-1)?.name ?? ''];
      const [one, other] = [[a, i], [b, j]] as const;
      const give = ([at, way]: readonly [string, number], [seen, look]: readonly [string, number]): number => {
        const six = [0, 0, 0, 0, 0, 0].map((_, index) => (index === way ? 1 : 0));
        const [x = 0, y = 0, z = 0, rx = 0, ry = 0, rz = 0] = six;
        const result = solveFrame({ ...frame, lineLoads: [], nodeLoads: [push(at, [x, y, z], [rx, ry, rz])] });
        return result.displacements[seen]?.[look] ?? NaN;
      };
      const [there, back] = [give(one, other), give(other, one)];
      expect(Math.abs(there - back)).toBeLessThan(1e-8 * (Math.abs(there) + 1e-3));
    }), { numRuns: 100 });
  });

  it('turned as a whole it bends the same, turned', () => {
    fc.assert(fc.property(anyFrame, place(1).filter((axis) => Math.hypot(...axis) > 0.2), amount(3), (frame, axis, angle) => {
      const turn = turner(axis, angle);
      const here = solveFrame(withUps(frame));
      const there = solveFrame(turned(withUps(frame), turn));
      const size = Math.max(...Object.values(here.displacements).flat().map(Math.abs), 1e-9);
      Object.entries(here.displacements).forEach(([node, [x, y, z, rx, ry, rz]]) => {
        const wanted = [...turn([x, y, z]), ...turn([rx, ry, rz])];
        wanted.forEach((value, index) => { expect(Math.abs((there.displacements[node]?.[index] ?? NaN) - value)).toBeLessThan(1e-6 * size); });
      });
    }), { numRuns: 100 });
  });

  it('twice the span gives sixteen times the sag under a line load', () => {
    const sag = (span: number): number => -shiftOf(solveFrame(frameOf({ a: [0, 0, 0], m: [span / 2, 0, 0], b: [span, 0, 0] }, {
      members: [bar('a', 'm', section), bar('m', 'b', section)],
      supports: [hold('a', [...pinned, 'rx']), hold('b', ['uy', 'uz'])],
      lineLoads: ['a-m', 'm-b'].map((member) => ({ member, perLength: [0, 0, -0.1] })),
    })), 'm', 'uz');
    fc.assert(fc.property(fc.double({ min: 50, max: 5000, noNaN: true }), (span) => {
      expect(sag(2 * span) / sag(span)).toBeCloseTo(16, 6);
    }));
  });

  it('with cables: no cable pushes, what is taut is stretched, all is in balance, whatever the order of the cables', () => {
    const hung = fc.tuple(anyFrame, fc.array(fc.tuple(place(900), fc.nat(6)), { minLength: 1, maxLength: 6 }));
    fc.assert(fc.property(hung, ([frame, ties]) => {
      const anchors = ties.map(([at], index) => ({ name: `anchor ${index}`, at: [at[0], at[1], at[2] + 2000] as Place }));
      const cabled: Frame = {
        ...frame, nodes: [...frame.nodes, ...anchors],
        supports: [...frame.supports, ...anchors.map(({ name }) => hold(name, all))],
        cables: ties.map(([, node], index) => ({ name: `c${index}`, from: `anchor ${index}`, to: `n${node % frame.nodes.length}`, EA: 60_000 })),
      };
      const result = solveFrame(cabled);
      const { force } = outside(cabled, result);
      force.forEach((value) => { expect(Math.abs(value)).toBeLessThan(1e-4); });
      cabled.cables.forEach(({ name, from, to }) => {
        const span = plus(atOf(cabled, to), [-1, -1, -1].map((sign, i) => sign * (atOf(cabled, from)[i] ?? 0)) as unknown as Place);
        const length = Math.hypot(...span);
        const stretch = span.reduce((sum, part, i) => sum + (part / length) * (result.displacements[to]?.[i] ?? NaN), 0);
        expect(Math.abs((result.cableForces[name] ?? NaN) - Math.max(0, (60_000 / length) * stretch))).toBeLessThan(1e-5);
      });
      const reversed = solveFrame({ ...cabled, cables: cabled.cables.toReversed() });
      cabled.cables.forEach(({ name }) => { expect(reversed.cableForces[name]).toBeCloseTo(result.cableForces[name] ?? NaN, 5); });
    }), { numRuns: 150 });
  });
});

/** Every member told its default "up" so that it can be turned along. */
function withUps(frame: Frame): Frame {
  return { ...frame, members: frame.members.map((member) => ({ ...member, up: member.up ?? [0, 0, 1] })) };
}

function turned(frame: Frame, turn: (a: Place) => Place): Frame {
  return {
    ...frame,
    nodes: frame.nodes.map((node) => ({ ...node, at: turn(node.at) })),
    members: frame.members.map((member) => ({ ...member, ...(member.up ? { up: turn(member.up) } : {}) })),
    nodeLoads: frame.nodeLoads.map(({ node, force = [0, 0, 0], moment = [0, 0, 0] }) => push(node, turn(force), turn(moment))),
    lineLoads: frame.lineLoads.map((load) => ({ ...load, perLength: turn(load.perLength) })),
  };
}

/** Turn about an axis by an angle, by Rodrigues' formula. */
function turner(axis: Place, angle: number): (a: Place) => Place {
  const size = Math.hypot(...axis);
  const k: Place = [axis[0] / size, axis[1] / size, axis[2] / size];
  return (a) => {
    const along = (k[0] * a[0] + k[1] * a[1] + k[2] * a[2]) * (1 - Math.cos(angle));
    const side = cross(k, a);
    return [0, 1, 2].map((i) => (a[i] ?? 0) * Math.cos(angle) + (side[i] ?? 0) * Math.sin(angle) + (k[i] ?? 0) * along) as unknown as Place;
  };
}
