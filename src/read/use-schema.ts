import { z } from 'zod';
import { expression, section } from './fields.ts';
import { messages } from './messages.ts';
import type { Mattress, People, WallKind } from './types.ts';

export const peopleNames = ['adults', 'anyone', 'pupils', 'small-children'] as const satisfies readonly People[];
const places = ['indoors'] as const;
export const wallNames = ['masonry', 'timber', 'board'] as const satisfies readonly WallKind[];
export const mattressFields = ['length', 'width', 'thickness'] as const satisfies readonly (keyof Mattress)[];

/** Fields of the item file that say where it stands and who uses it. Which of them a use asks for is checked by `readDeclares`. */
export const useFields = {
  place: z.enum(places, { error: messages.place }).meta({ description: 'Where it stands. Nothing is calculated for wind, wet and sun.' }),
  wall: z.enum(wallNames, { error: messages.wall(wallNames) })
    .meta({ description: 'The wall it is fixed to where it must be: masonry (when left out), timber (posts in the wall), board (nothing holds: no safe load). For storage only.' }).optional(),
  for: z.enum(peopleNames, { error: messages.people(peopleNames) })
    .meta({ description: 'Who uses it: adults, anyone (children too), pupils (with a mark), or small-children who walk, for a bed. Sets loads and gaps.' }),
  mark: expression('Size mark of EN 1729-1, 0 to 7: for pupils only.').optional(),
  mattress: section({
    length: expression('Length of the mattress, along the long tubes.'),
    width: expression('Width of the mattress, along the short tubes.'),
    thickness: expression('Thickness of the thickest mattress.'),
  }, 'The mattress that a bed is made for: for a bed only.').optional(),
} as const;
