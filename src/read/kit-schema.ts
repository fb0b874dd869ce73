import { z } from 'zod';
import { catalogueSections, panelFields, tubeFields } from './catalogue/schema.ts';
import { fileName, measure, oneWord, section, wholeFromOne } from './fields.ts';
import { localLimits } from './local-limits.ts';
import { messages } from './messages.ts';

/** The sections of a kit file as written there, in kebab-case. The numbers come out in the base units of `Kit`. */
export const kitSections = {
  panel: section(panelFields, 'The sandwich panels.'),
  tube: section({
    'outside-diameter': measure('length', 'Outside diameter.'),
    ...tubeFields,
  }, 'The tubes.'),
  joint: section({
    'sleeve-diameter': measure('length', 'Outside diameter of the upright ring the post slides through.'),
    'sleeve-above': measure('length', 'From the middle of the deck tubes to the end of the sleeve on the deck side.'),
    'sleeve-below': measure('length', 'From the middle of the deck tubes to the other end of the sleeve.'),
    bore: measure('length', 'Inside diameter of the sleeve.'),
    'socket-diameter': measure('length', 'Outside diameter of the two arms the deck tubes push into.'),
    'socket-depth': measure('length', 'Depth of a socket.'),
    stop: measure('length', 'From the middle of the post to the end of a pushed-in tube.'),
    'end-play': measure('length', 'A tube may be this much short and still sit well.', { zero: true }),
    'stud-diameter': measure('length', 'Diameter of the two studs for cable loops.'),
    'stud-reach': measure('length', 'From the middle of the post to the end of the stud.'),
    'stud-head-diameter': measure('length', 'Diameter of the head that keeps the loop on.'),
    'stud-head': measure('length', 'Thickness of that head.'),
    'pin-height': measure('length', 'Below the middle of the deck tubes: where post and sleeve are drilled.'),
    mass: measure('mass', 'Mass of one joint.'),
  }, 'The corner joints.'),
  'panel-pin': section({
    diameter: measure('length', 'Diameter of the shank.'),
    length: measure('length', 'Length of the shank.'),
    'head-diameter': measure('length', 'Diameter of the head.'),
    'head-height': measure('length', 'Height of the head.'),
  }, 'The barbed push-pins that hold the tabs.'),
  'joint-pin': section({
    diameter: measure('length', 'Diameter of the shank.'),
    length: measure('length', 'Length of the shank.'),
    'head-diameter': measure('length', 'Diameter of the head.'),
    'head-height': measure('length', 'Height of the head.'),
    strength: measure('stress', 'Tensile strength of the pin.'),
    'wing-span': measure('length', 'Span of the wing nut.'),
    'nut-height': measure('length', 'Height of the wing nut.'),
  }, 'The pins through sleeve and post, closed by a wing nut.'),
  cable: section({
    diameter: measure('length', 'Diameter of the cable.'),
    length: measure('length', 'Length of a cable as delivered.'),
    stiffness: measure('force', 'Force for the whole length stretched to double, E times A.'),
    strength: measure('force', 'Force that breaks the cable.'),
  }, 'The bracing cables.'),
  practice: section({
    'inside-gap': measure('length', 'From the inside line to the frame.', { zero: true }),
    'wrap-clearance': measure('length', 'Between tube and panel.', { zero: true }),
    'turn-back': measure('angle', 'The run comes down at this angle and the tab turns back by it.', { upTo: ['90', 'deg'] }),
    tab: measure('length', 'From the half-cut to the edge of the tab.'),
    'pin-edge': measure('length', 'From the edge of the tab to the pins.'),
    punching: z.enum(['after-wrapping', 'flat'], { error: messages.punching }).default('after-wrapping').meta({
      description: 'When the holes of the panel pins are punched: after-wrapping, through tab and panel where they lie, so that a millimetre in the fold does not matter (so when left out); or flat, by the pattern.',
    }),
    'pin-end': measure('length', 'From the end of the tab to its first pin.'),
    'pin-pitch': measure('length', 'Pins stand no further apart than this.'),
    'notch-gap': measure('length', 'Round the corner joint.', { zero: true }),
    'notch-radius': measure('length', 'Radius of the inside corner of a notch.', { zero: true }),
    'tab-corner': measure('length', 'The least that is snipped off each corner of a tab.', { zero: true }),
    'saw-kerf': measure('length', 'Width of the saw cut.', { zero: true }),
    'knife-kerf': measure('length', 'Width of the knife cut.', { zero: true }),
  }, 'How the kits are built with; change with care.'),
} as const;

const contents = section({
  panels: wholeFromOne('Panels.'),
  tubes: wholeFromOne('Tubes.'),
  joints: wholeFromOne('Corner joints.'),
  'panel-pins': wholeFromOne('Panel pins.'),
  'joint-pins': wholeFromOne('Joint pins.'),
  'wing-nuts': wholeFromOne('Wing nuts.'),
  cables: wholeFromOne('Cables.'),
}, 'How many of each part a whole kit has: without it no order can be told in kits.');

const jointTest = section({
  load: measure('force', 'What one joint bore, hung from its sleeve for an hour.'),
  slip: measure('length', 'How far it slid on its post.', { zero: true }),
}, 'The makers’ own test of a joint, see the readme: without it every load that is printed is reduced.');

const caps = section({
  'tube-ends': z.boolean({ error: messages.yesOrNo }).meta({ description: 'Whether caps close the open ends of tubes.' }),
  studs: z.boolean({ error: messages.yesOrNo }).meta({ description: 'Whether round caps cover the studs that no cable uses.' }),
}, 'What the kit has to cover what would cut or catch.');

export const kitSchema = section({
  kind: oneWord('kit', messages.kind('kit'), 'Says that this is a kit file.'),
  name: fileName('Name of the kit, the same as the file has.'),
  ...kitSections,
  'joint-test': jointTest.optional(),
  caps: caps.optional(),
  'local-limits': localLimits.optional(),
  ...catalogueSections,
  contents: contents.optional(),
}, 'One retired structure, as delivered. Every number carries its unit.');
