import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { FittingKind } from '../../read/index.ts';
import { brakeReach, TOE } from '../brake-reach.ts';
import type { Shape } from '../types.ts';
import { screwsOut } from '../wall-places.ts';
import { alongAxis, rod } from './round.ts';

type Of<Is extends FittingKind['is']> = Extract<FittingKind, { is: Is }>;

/** A plug is this much thinner than the tube's inside, and a clip this much wider than its outside, mm. Common practice, no source. */
const PLAY = 0.4;

/** A small part of the kit, in the coordinates that `Shape` tells. */
export function buildFitting(kernel: ManifoldToplevel, { fitting, outside, inside }: Extract<Shape, { form: 'fitting' }>): Manifold {
  switch (fitting.is) {
    case 'foot-plate':
    case 'end-cap': return rod(kernel, fitting.diameter, -fitting.thickness, 0).add(plug(kernel, inside, fitting.plug));
    case 'castor': return castor(kernel, fitting, inside);
    case 'wall-bracket': return wallBracket(kernel, fitting, outside);
    case 'hinge': return hinge(kernel, fitting, outside);
    case 'lid-stay': return hinge(kernel, fitting, outside).add(knob(kernel, outside / 2 + fitting.thickness));
  }
}

/** Begins a little below the tube's end, so that it is one with what it stands on. */
const plug = (kernel: ManifoldToplevel, inside: number, length: number): Manifold => rod(kernel, inside - PLAY, -1, length);

/** Plug, a plate under the tube, two cheeks and a wheel that trails to +x; with a brake, a lever over the wheel that reaches past it, its end turned up. */
function castor(kernel: ManifoldToplevel, { wheel, width, height, trail, plug: depth, brake }: Of<'castor'>, inside: number): Manifold {
  const { Manifold } = kernel;
  const axle = wheel / 2 - height;
  const plate = Manifold.cube([trail + width + 8, width + 12, 4], true).translate(trail / 2, 0, -2);
  const cheek = Manifold.cube([16, 4, -axle + 4], true).translate(trail, 0, (axle - 4) / 2);
  const cheeks = [1, -1].map((side) => cheek.translate(0, side * (width / 2 + 3), 0));
  const axis = alongAxis(rod(kernel, 6, -width / 2 - 5, width / 2 + 5), 'y').translate(trail, 0, axle);
  const rim = alongAxis(rod(kernel, wheel, -width / 2, width / 2), 'y').translate(trail, 0, axle);
  const lever = brake ? brakeLever(kernel, width + 10, trail + 7, brakeReach({ wheel, trail }), axle + wheel / 4) : [];
  return Manifold.union([plug(kernel, inside, depth), plate, ...cheeks, axis, rim, ...lever]);
}

function brakeLever({ Manifold }: ManifoldToplevel, width: number, from: number, to: number, z: number): readonly Manifold[] {
  return [
    Manifold.cube([to - from, width, 4], true).translate((from + to) / 2, 0, z),
    Manifold.cube([4, width, TOE], true).translate(to - 2, 0, z + TOE / 2),
  ];
}

/** A clip round z, open to −y over a third of its round, as wide as told. */
function clip(kernel: ManifoldToplevel, outside: number, thickness: number, width: number): Manifold {
  const hole = outside + PLAY;
  const ring = rod(kernel, hole + 2 * thickness, -width / 2, width / 2).subtract(rod(kernel, hole, -width, width, 'hole'));
  const mouth = kernel.Manifold.cube([hole * MOUTH, outside + 2 * thickness, 2 * width], true).translate(0, -(outside / 2 + thickness), 0);
  return ring.subtract(mouth);
}

/** The mouth of a clip is so much of the tube's width, so that it snaps on. Common practice, no source. */
export const MOUTH = 0.85;

function wallBracket(kernel: ManifoldToplevel, { plate, thickness, reach, width }: Of<'wall-bracket'>, outside: number): Manifold {
  const { Manifold } = kernel;
  const start = (outside + PLAY) / 2 + thickness / 2;
  const arm = Manifold.cube([2 * thickness, reach - start, width], true).translate(0, (start + reach) / 2, 0);
  const wall = Manifold.cube([plate, thickness, plate], true).translate(0, reach - thickness / 2, 0);
  const holes = [-1, 1].map((side) => rod(kernel, SCREW_HOLE, -reach - 1, -reach + thickness + 1).rotate([90, 0, 0]).translate(0, 0, side * screwsOut({ plate })));
  return Manifold.union([clip(kernel, outside, thickness, width), arm, wall]).subtract(Manifold.union(holes));
}

/** A bracket's screws go through its plate over and under the arm: the holes' diameter, mm. */
const SCREW_HOLE = 7;

/** The clip lies round x, open to −z; a web carries the leaf, whose barbs go up into the panel. */
function hinge(kernel: ManifoldToplevel, { width, thickness, leaf, reach }: Of<'hinge'> | Of<'lid-stay'>, outside: number): Manifold {
  const { Manifold } = kernel;
  const ring = clip(kernel, outside, thickness, width).rotate([90, 0, 90]);
  const start = (outside + PLAY) / 2 + thickness / 2;
  const web = Manifold.cube([width, 2 * thickness, reach - thickness / 2 - start], true).translate(0, 0, (start + reach - thickness / 2) / 2);
  const flat = Manifold.cube([width, leaf + thickness, thickness], true).translate(0, (leaf - thickness) / 2, reach - thickness / 2);
  const barbs = BARBS.map((share) => rod(kernel, BARB.diameter, reach - thickness, reach + BARB.length).translate((share * width) / 2, leaf - BARB.fromEnd, 0));
  return Manifold.union([ring, web, flat, ...barbs]);
}

/** The knob by which a stay is set stiff, at the back of its clip, `from` mm behind the tube's axis; by it one tells it from a hinge. */
const knob = (kernel: ManifoldToplevel, from: number): Manifold => alongAxis(rod(kernel, KNOB.diameter, -from - KNOB.length, 1 - from), 'y');

/** The knob's diameter and length (common practice, no source), mm. */
export const KNOB = { diameter: 18, length: 14 } as const;

/** Two barbs on a leaf: their diameter and length, how far from the leaf's end, and where across it, mm. They end 3 mm under the upper face of a panel of 9. */
export const BARB = { diameter: 5, length: 6, fromEnd: 10 } as const;
export const BARBS = [-0.5, 0.5] as const;
