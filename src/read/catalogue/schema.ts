import { z } from 'zod';
import { fileName, measure, namedSection, oneWord, section, share, shareAboveZero } from '../fields.ts';
import { limits } from '../limits.ts';
import { messages } from '../messages.ts';
import { fittingSchema } from './fittings.ts';

const say = messages.catalogue;

const figure = z.number({ error: say.direction }).min(-1000, { error: say.direction }).max(1000, { error: say.direction });

const direction = (purpose: string) => z.tuple([figure, figure, figure], { error: say.direction })
  .refine((axis) => axis.some((value) => value !== 0), { error: say.direction })
  .meta({ description: purpose });

/** The way a port looks, straight or leaning by an angle. */
const axis = {
  axis: direction('The way its tube goes out of it, as three plain numbers across, back and up, for example [0, 0, 1].'),
  tilt: measure('angle', 'Lean of the axis, together with towards.', { upTo: ['90', 'deg'] }).optional(),
  towards: direction('The way it leans, square to axis.').optional(),
};

const profile = z.enum(['round', 'square'], { error: say.profile }).default('round').meta({ description: 'Outline of the tube; round when left out.' });

const portSchema = z.discriminatedUnion('is', [
  section({
    is: oneWord('socket', say.port, 'A tube ends in it.'),
    ...axis,
    depth: measure('length', 'Depth of the socket.'),
    stop: measure('length', 'From the middle of the joint to the end of a pushed-in tube.', { zero: true }),
  }, 'A socket.'),
  section({
    is: oneWord('sleeve', say.port, 'A tube runs through it and is pinned.'),
    ...axis,
    above: measure('length', 'From the middle of the joint to the end of the sleeve, along the axis.'),
    below: measure('length', 'From the middle of the joint to its other end.'),
    pin: measure('length', 'Below the middle of the joint: where tube and sleeve are drilled.', { zero: true }),
  }, 'A sleeve.'),
  section({
    is: oneWord('stud', say.port, 'A cable hooks on it.'),
    ...axis,
    reach: measure('length', 'From the middle of the joint to the end of the stud.'),
    diameter: measure('length', 'Diameter of the stud.'),
    head: measure('length', 'Thickness of the head that keeps the loop on.'),
    'head-diameter': measure('length', 'Diameter of that head.'),
  }, 'A stud.'),
], { error: say.port });

export const jointSchema = section({
  profile,
  bore: measure('length', 'Inside diameter of sleeves and sockets.'),
  'sleeve-diameter': measure('length', 'Outside diameter of the sleeves.'),
  'socket-diameter': measure('length', 'Outside diameter of the sockets.'),
  'end-play': measure('length', 'A tube may be this much short and still sit well.', { zero: true }),
  up: direction('The way that is up when there is a choice; [0, 0, 1] when left out.').default([0, 0, 1]),
  ports: z.array(portSchema, { error: say.ports }).min(1, { error: say.ports }).max(limits.ports, { error: messages.entries(limits.ports) }).meta({ description: 'Its sockets, sleeves and studs.' }),
  mass: measure('mass', 'Mass of one joint.'),
}, 'A joint.');

export const panelFields = {
  length: measure('length', 'Length of a panel as delivered.'),
  width: measure('length', 'Width of a panel as delivered.'),
  thickness: measure('length', 'From the outside of one skin to the outside of the other.'),
  skin: measure('length', 'Thickness of each of the two skins.'),
  'neutral-layer': share('Share of the thickness, from the inner face, that keeps its length in a crease.'),
  'tightest-crease': measure('angle', 'A sharper fold in one crease breaks the skin.', { upTo: ['180', 'deg'] }),
  density: measure('density', 'Mass of the whole panel over its volume.'),
  'skin-modulus': measure('stress', 'Modulus of elasticity of the skins.'),
  'skin-strength': measure('stress', 'Strength of the skins as new.'),
  'core-shear-modulus': measure('stress', 'Shear modulus of the core.'),
  'core-shear-strength': measure('stress', 'Shear strength of the core as new.'),
  'used-stock-factor': shareAboveZero('Share of the strength left in weathered stock.'),
} as const;

export const tubeFields = {
  wall: measure('length', 'Thickness of the wall.'),
  length: measure('length', 'Length of a tube as delivered.'),
  density: measure('density', 'Density of the wall.'),
  modulus: measure('stress', 'Modulus of elasticity along the tube.'),
  'bending-strength': measure('stress', 'Strength in bending as new.'),
  'bearing-strength': measure('stress', 'Strength of the wall against a pin as new.'),
  'used-stock-factor': shareAboveZero('Share of the strength left in weathered stock.'),
} as const;

export const tubeSchema = section({ profile, outside: measure('length', 'Outside diameter, or from face to face.'), ...tubeFields }, 'A tube.');

export const panelSchema = section(panelFields, 'A panel.');

const named = <Entry extends z.ZodType>(entry: Entry, purpose: string) =>
  namedSection(fileName('Its name.'), entry, purpose, { most: limits.kinds }).default({});

/** Sections of a kit file with further kinds of parts, each under a name. */
export const catalogueSections = {
  joints: named(jointSchema, 'Joints besides the corner joint, each with its ports.'),
  tubes: named(tubeSchema, 'Tubes besides the usual one.'),
  panels: named(panelSchema, 'Panels besides the usual one.'),
  fittings: named(fittingSchema, 'Feet, castors, caps, hinges, stays and brackets.'),
} as const;

export type GivenJoint = z.output<typeof jointSchema>;
export type GivenPort = z.output<typeof portSchema>;
