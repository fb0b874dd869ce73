import type { Model } from '../../model/index.ts';
import { creaseStrip } from './crease-strip.ts';
import { pinStrips } from './pin-strip.ts';
import { postStrips } from './post-strip.ts';
import type { Strip } from './strip.ts';

/** The gauges of an item: for the creases, for the pins of each kind of side, for each kind of post. */
export const stripsOf = (model: Model): readonly Strip[] => [creaseStrip(model), ...pinStrips(model), ...postStrips(model)];
