import type { Vec2 } from '../../model/index.ts';
import { hatching } from './hatching.ts';
import { area, line, outline, type Mark } from './marks.ts';
import { pens } from './pens.ts';

/** From line to line of its hatching, mm of paper. */
const PITCH = 1.8;

/** A face that is cut through: hatched, with a strong outline. */
export const cutFace = (ring: readonly Vec2[]): readonly Mark[] => [area('core', ring), ...hatching(ring, PITCH).map(([from, to]) => line(pens.edge, from, to)), outline(pens.cut, ring)];
