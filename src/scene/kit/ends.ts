import type { Model, Solids } from '../../model/index.ts';
import type { Scene } from '../types.ts';
import { withBlindEnds } from './blind-ends.ts';
import { withCaps } from './capped.ts';

/** A scene as it is drawn: caps on the ends that stay open, and sockets dark in which no bar stands. */
export const withEnds = <Of extends Scene>(model: Model, solids: Solids, scene: Of): Of => withBlindEnds(model, solids, withCaps(model, solids, scene));
