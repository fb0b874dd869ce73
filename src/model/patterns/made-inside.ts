import type { Bend } from '../types.ts';

/** Whether a bend is made on the inner face, which bears the marks: a crease is pressed into the face that it turns to, a half-cut opens on the face that it turns away from. */
export const isMadeInside = ({ is, turn }: Pick<Bend, 'is' | 'turn'>): boolean => (turn > 0) === (is === 'crease');
