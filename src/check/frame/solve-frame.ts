import { add, assemble, nodeLoadsOf, type Assembly, type PlacedBar } from './assembly.ts';
import { toOwn, toWhole } from './bar.ts';
import { settle, type Settled } from './settle.ts';
import { refuseUnsound } from './sound-frame.ts';
import type { EndForces, Frame, FrameResult, Six } from './types.ts';

/**
 * Displacements, forces and reactions of a linear elastic frame in space under small displacements: Euler–Bernoulli
 * bars, cables that only pull (direct stiffness method; Weaver & Gere, Matrix Analysis of Framed Structures (M)).
 * Units N, mm, rad. Errors: FrameError for a frame that makes no sense, MechanismError for one that gives way.
 */
export function solveFrame(frame: Frame): FrameResult {
  refuseUnsound(frame);
  const assembly = assemble(frame);
  const settled = settle(assembly);
  const ends = assembly.bars.map((bar) => endForcesOf(bar, settled.shifts));
  return {
    displacements: named(frame.nodes, (_, index) => sixAt(settled.shifts, 6 * index)),
    memberForces: named(assembly.bars, (_, index) => asEnds(ends[index] ?? [])),
    cableForces: named(assembly.springs, (_, index) => settled.pulls[index] ?? 0),
    reactions: reactionsOf(assembly, settled, ends),
  };
}

/** K u less what the line load hands on: twelve forces in the bar's own axes. */
function endForcesOf({ axes, places, stiffness, handedOn }: PlacedBar, shifts: Float64Array): readonly number[] {
  const own = toOwn(axes, places.map((place) => shifts[place] ?? 0));
  return stiffness.map((row, i) => row.reduce((sum, value, j) => sum + value * (own[j] ?? 0), -(handedOn[i] ?? 0)));
}

/** What the bars and cables ask of each held freedom beyond the loads on its node. */
function reactionsOf(assembly: Assembly, { pulls }: Settled, ends: readonly (readonly number[])[]): FrameResult['reactions'] {
  const { frame, size, bars, springs, held } = assembly;
  const numbers = new Map(frame.nodes.map(({ name }, index) => [name, 6 * index]));
  const first = (node: string): number => numbers.get(node) ?? 0;
  const asked = nodeLoadsOf(frame, size, first).map((load) => -load);
  bars.forEach(({ axes, places }, index) => {
    toWhole(axes, ends[index] ?? []).forEach((force, i) => { add(asked, places[i] ?? 0, force); });
  });
  springs.forEach(({ along, places }, index) => {
    places.forEach((place, i) => { add(asked, place, (along[i] ?? 0) * (pulls[index] ?? 0)); });
  });
  const reacting = asked.map((force, index) => (held.has(index) ? force : 0));
  return named(frame.supports.map(({ node }) => ({ name: node })), ({ name }) => sixAt(reacting, first(name)));
}

function named<Thing extends { readonly name: string }, Value>(
  things: readonly Thing[], valueOf: (thing: Thing, index: number) => Value,
): Readonly<Record<string, Value>> {
  return Object.fromEntries(things.map((thing, index) => [thing.name, valueOf(thing, index)]));
}

const asEnds = (forces: readonly number[]): EndForces => ({ from: sixAt(forces, 0), to: sixAt(forces, 6) });

function sixAt(values: ArrayLike<number>, first: number): Six {
  const at = (offset: number): number => values[first + offset] ?? 0;
  return [at(0), at(1), at(2), at(3), at(4), at(5)];
}
