import { z } from 'zod';
import { measure, oneWord, section } from '../fields.ts';
import { messages } from '../messages.ts';
import type { FittingKind } from './types.ts';

const say = messages.catalogue;

/** What is told of every fitting of a kind, whatever its measures. */
interface FittingFacts<Kind extends FittingKind = FittingKind> {
  /** Whether it goes into the end of a bar, or is put round one anywhere. */
  readonly isPlug: boolean;
  readonly holdsPanel: boolean;
  /** Whether it looks somewhere of its own: to the wall. */
  readonly hasFace: boolean;
  /** How far it stands from the end or the axis of its bar, mm. */
  readonly height: (fitting: Kind) => number;
}

export const FITTINGS: { readonly [Is in FittingKind['is']]: FittingFacts<Extract<FittingKind, { is: Is }>> } = {
  'foot-plate': { isPlug: true, holdsPanel: false, hasFace: false, height: ({ thickness }) => thickness },
  castor: { isPlug: true, holdsPanel: false, hasFace: false, height: ({ height }) => height },
  'end-cap': { isPlug: true, holdsPanel: false, hasFace: false, height: ({ thickness }) => thickness },
  'wall-bracket': { isPlug: false, holdsPanel: false, hasFace: true, height: ({ reach }) => reach },
  hinge: { isPlug: false, holdsPanel: true, hasFace: false, height: ({ reach }) => reach },
  'lid-stay': { isPlug: false, holdsPanel: true, hasFace: false, height: ({ reach }) => reach },
};

/** What is clipped round a bar and holds a panel by its leaf. */
type Clip = Extract<FittingKind, { readonly leaf: number }>;

export const isClip = (fitting: FittingKind): fitting is Clip => FITTINGS[fitting.is].holdsPanel;

/** How far a fitting stands from the end or the axis of its bar, mm. */
export const heightOf = (fitting: FittingKind): number => (FITTINGS[fitting.is] as FittingFacts).height(fitting);

const remedy = say.fitting(Object.keys(FITTINGS));

const plug = measure('length', 'How far its plug goes into the tube.');
const bore = measure('length', 'Inside diameter of the tube that its plug is for; that of the usual tube when left out.').optional();
const mass = measure('mass', 'Mass of one.');
const thickness = (of: string) => measure('length', `Thickness of the ${of}.`);

const clip = {
  width: measure('length', 'Width of the clip along the tube.'),
  thickness: thickness('clip and the leaf'),
  leaf: measure('length', 'From the axis of the tube to the end of the leaf.'),
  reach: measure('length', 'From the axis of the tube to the face of the panel.'),
  mass,
} as const;

/** A fitting as a kit file tells it, without its name. */
export const fittingSchema = z.discriminatedUnion('is', [
  section({ is: oneWord('foot-plate', remedy, 'A plug with a plate, for a tube that stands on the floor.'), diameter: measure('length', 'Diameter of the plate.'), thickness: thickness('plate'), plug, bore, mass }, 'A foot plate.'),
  section({
    is: oneWord('castor', remedy, 'A plug with a fork and a wheel.'),
    wheel: measure('length', 'Diameter of the wheel.'),
    width: measure('length', 'Width of the wheel.'),
    height: measure('length', 'From the floor to the end of the tube.'),
    trail: measure('length', 'From the axis of the plug to that of the wheel, seen from above.', { zero: true }),
    brake: z.boolean({ error: messages.yesOrNo }).default(false).meta({ description: 'True when it has a brake.' }),
    load: measure('force', 'What one castor carries.'),
    plug, bore, mass,
  }, 'A castor.'),
  section({ is: oneWord('end-cap', remedy, 'A plug that closes a tube.'), diameter: measure('length', 'Diameter of the cap.'), thickness: thickness('cap'), plug, bore, mass }, 'An end cap.'),
  section({
    is: oneWord('wall-bracket', remedy, 'A plate on a wall with a clip round a tube.'),
    plate: measure('length', 'Side of the square plate.'),
    thickness: thickness('plate and the clip'),
    reach: measure('length', 'From the wall to the axis of the tube.'),
    width: measure('length', 'Width of the clip along the tube.'),
    load: measure('force', 'Pull that one bracket holds.'),
    mass,
  }, 'A wall bracket.'),
  section({ is: oneWord('hinge', remedy, 'A clip that turns on a tube, with a leaf pinned to a panel.'), ...clip }, 'A hinge.'),
  section({ is: oneWord('lid-stay', remedy, 'A clip that turns stiffly on a tube, with a leaf pinned to a lid.'), ...clip, grip: measure('force', 'Force at the end of the leaf that turns it.') }, 'A lid stay.'),
], { error: remedy });
