import { part } from '../part.ts';
import { tube } from '../tubes.ts';

/** A tube along the left or the right of a deck or frame. */
export const facts = part(['tube'], tube);
