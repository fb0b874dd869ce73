import { part } from '../part.ts';
import { tube } from '../tubes.ts';

/** A tube from one point to another, any way. */
export const facts = part(['tube'], tube);
