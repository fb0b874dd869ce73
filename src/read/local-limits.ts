import { z } from 'zod';
import { measure, section, sentence } from './fields.ts';
import { messages } from './messages.ts';

/** Far more than any rule asks for, ours: so that a slip of the pen is told. */
const above = (most: number, purpose: string) => z.number({ error: messages.aboveNought(most) }).gt(0, { error: messages.aboveNought(most) }).max(most, { error: messages.aboveNought(most) }).meta({ description: purpose });

const MOST_FACTOR = 100;
const factor = (purpose: string) => z.number({ error: messages.oneOrMore(MOST_FACTOR) }).min(1, { error: messages.oneOrMore(MOST_FACTOR) }).max(MOST_FACTOR, { error: messages.oneOrMore(MOST_FACTOR) }).meta({ description: purpose });

/** A value that local rules give in place of one that is known here from memory only. */
const local = <Value extends z.ZodType>(value: Value, purpose: string) => section({
  value,
  source: sentence(messages.localSource, 'The rule that the value is from, as every finding prints it.'),
}, purpose).optional();

/**
 * The limits that a kit's makers may set by their local rules: all that can fail an item and are known here from memory
 * alone. Named as in the table of limits of the checks.
 */
export const localLimits = section({
  'factor-of-safety': local(factor('Times the load.'), 'On every strength of what stands laden for years.'),
  'seat-test': local(measure('force', 'Force on a seat.'), 'The test load of one seat.'),
  pad: local(measure('length', 'Breadth of the pad.'), 'The pad that a test load stands on.'),
  spread: local(above(10, 'Share of the span.'), 'How far a load spreads to the side in a panel.'),
  'guard-push': local(measure('force', 'Force on a guard.'), 'The push that a bed’s guard must bear.'),
  'tube-shear': local(above(10, 'Share of the modulus.'), 'Shear modulus of the tubes over their modulus.'),
  'screen-drift-ratio': local(above(100_000, 'Height over drift.'), 'How far a partition may sway.'),
  'screen-factor': local(factor('Times the push.'), 'On the strength of a partition that is pushed.'),
  'creep-skin': local(above(10, 'Exponent of the hours.'), 'How fast skins give way in years.'),
  'creep-core': local(above(10, 'Exponent of the hours.'), 'How fast cores give way in years.'),
  'lid-factor': local(above(1000, 'Times the weight of the lid.'), 'How much a stay holds.'),
  'lid-lift': local(measure('force', 'Force at the lid’s front edge.'), 'The most that it takes to open a lid.'),
  'hinge-least': local(measure('length', 'Gap along the hinges.'), 'Under this gap no finger gets in.'),
  'hinge-most': local(measure('length', 'Gap along the hinges.'), 'From this gap on a finger comes out again.'),
  'vent-area': local(measure('area', 'Open area of one side.'), 'What lets a child breathe under a shut lid.'),
}, 'Limits by local rules, in place of those known from memory.');
