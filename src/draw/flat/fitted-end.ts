import type { Vec2 } from '../../model/index.ts';
import { BRAKE_TOE, brakeReach } from '../../model/index.ts';
import type { FittingKind } from '../../read/index.ts';
import { area, circle, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** What goes into the end of a tube. Lengths in mm. */
export type EndFitting = Extract<FittingKind, { readonly is: 'castor' | 'foot-plate' | 'end-cap' }>;
export type Castor = Extract<EndFitting, { readonly is: 'castor' }>;

/** Places round the end of a tube: so far on past the end along its axis, and so far aside on the side that a castor trails to; mm of paper. */
export type AtEnd = (on: number, aside: number) => Vec2;

/** A tube that lies, its end on the right at a place of its axis; and one that stands, its end below. */
export const lying = ([x, y]: Vec2): AtEnd => (on, aside) => [x + on, y - aside];
export const standing = ([x, y]: Vec2): AtEnd => (on, aside) => [x + aside, y + on];

/** The same so far on, and the same turned about its axis's place by so much, rad. */
export const movedOn = (at: AtEnd, by: number): AtEnd => (on, aside) => at(on + by, aside);
export const tipped = (at: AtEnd, by: number): AtEnd => (on, aside) => at(on * Math.cos(by) - aside * Math.sin(by), on * Math.sin(by) + aside * Math.cos(by));

/** A rectangle. */
export const boxAt = (at: AtEnd, [from, to]: Vec2, [low, high]: Vec2): readonly Vec2[] => [at(from, low), at(to, low), at(to, high), at(from, high)];

/** A tube cut lengthwise, so long, mm of paper, to no scale: its walls and what it is hollow. */
export function tubeCut(at: AtEnd, long: number, { half, wall }: { readonly half: number; readonly wall: number }): readonly Mark[] {
  const walls = [boxAt(at, [-long, 0], [half - wall, half]), boxAt(at, [-long, 0], [-half, wall - half])];
  const hollow = boxAt(at, [-long, 0], [wall - half, half - wall]);
  return [area('white', hollow), ...walls.flatMap((ring) => [area('core', ring), outline(pens.cut, ring)])];
}

/** How a castor's brake is set; a lever that is loose stands up by so much, rad (common practice, no source). */
export type BrakeSet = 'loose' | 'locked';
const LOOSE = 0.6;

/** A castor's fork reaches so far to either side of its axle, and is so much longer than to it, and the thickness of its plate and of the lever; mm, as the solid has them. */
const FORK = { half: 8, past: 4, axle: 3, plate: 4, lever: 4, root: 7, rim: 8 } as const;

/** What is fitted, seen across its tube, at so many mm of paper for one mm; of its plug how long and half how thick it is, mm of paper. */
export function fittingMarks(fitting: EndFitting, at: AtEnd, scale: number, plug: { readonly long: number; readonly half: number }, brake: BrakeSet = 'locked'): readonly Mark[] {
  const shank = filled(boxAt(at, [-plug.long, 0], [-plug.half, plug.half]));
  if (fitting.is !== 'castor') return [...shank, ...filled(boxAt(at, [0, fitting.thickness * scale], [(-fitting.diameter * scale) / 2, (fitting.diameter * scale) / 2]))];
  const { wheel, height, trail } = fitting;
  const axle = (height - wheel / 2) * scale;
  const centre = at(axle, trail * scale);
  return [
    ...shank, circle(centre, (wheel * scale) / 2, pens.cut, 'fresh'),
    ...filled(boxAt(at, [0, FORK.plate * scale], plateOf(fitting, scale))),
    ...filled(boxAt(at, [FORK.plate * scale, axle + FORK.past * scale], [(trail - FORK.half) * scale, (trail + FORK.half) * scale])),
    circle(centre, FORK.axle * scale, null, 'ink'), ...(fitting.brake ? leverMarks(fitting, at, scale, brake) : []),
  ];
}

/** From where to where a castor's plate reaches, mm of paper. */
export const plateOf = ({ trail, width }: Castor, scale: number): Vec2 => [(-width / 2 - FORK.rim / 2) * scale, (trail + width / 2 + FORK.rim / 2) * scale];

/** How thick the plate of a fitting is, mm. */
export const plateThick = (fitting: EndFitting): number => (fitting.is === 'castor' ? FORK.plate : fitting.thickness);

/** A castor's brake lever. */
function leverMarks(fitting: Castor, at: AtEnd, scale: number, brake: BrakeSet): readonly Mark[] {
  const on = leverAt(fitting, at, scale, brake);
  const [long, thick] = [leverLong(fitting) * scale, (FORK.lever * scale) / 2];
  return [area('ink', [on(0, -thick), on(long, -thick), on(long, BRAKE_TOE * scale), on(long - 2 * thick, BRAKE_TOE * scale), on(long - 2 * thick, thick), on(0, thick)])];
}

/** How long a brake's lever is from its root, mm. */
const leverLong = (fitting: Castor): number => brakeReach(fitting) - fitting.trail - FORK.root;

/** Places of the lever: so far along it from its root, and so far up on the side of the tube, mm of paper. */
function leverAt({ wheel, height, trail }: Castor, at: AtEnd, scale: number, brake: BrakeSet): (along: number, up: number) => Vec2 {
  const [root, aside] = [(height - wheel * 0.75) * scale, (trail + FORK.root) * scale];
  const [sin, cos] = brake === 'loose' ? [Math.sin(LOOSE), Math.cos(LOOSE)] : [0, 1];
  return (along, up) => at(root - along * sin - up * cos, aside + along * cos - up * sin);
}

/** The end of the lever that is pressed, mm of paper. */
export const leverEnd = (fitting: Castor, at: AtEnd, scale: number, brake: BrakeSet): Vec2 => leverAt(fitting, at, scale, brake)((leverLong(fitting) - FORK.lever / 2) * scale, BRAKE_TOE * scale);

const filled = (ring: readonly Vec2[]): readonly Mark[] => [area('fresh', ring), outline(pens.cut, ring)];
