import { part } from '../part.ts';
import { tube } from '../tubes.ts';

/** An upright tube at a corner. */
export const facts = part(['tube'], tube);
