import { part } from '../part.ts';
import { tube } from '../tubes.ts';

/** A tube along the front or the back of a deck or frame. */
export const facts = part(['tube'], tube);
