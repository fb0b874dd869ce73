import type { Part } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { slideWork, type WorkScene } from '../../scene/kit/index.ts';

/** Long tubes pushed into an end, not joints pushed onto tubes. */
const pushesLong = ({ detail }: Step): boolean => detail.on === 'tubes' && detail.tubes === 'long';

/** The far end of a frame, which is not yet to be seen when long tubes are pushed into the near one. */
const isAtRightEnd = ({ kind, place }: Part): boolean =>
  (kind === 'joint' && place.at === 'corner' && place.corner.x === 'right') || (kind === 'short-tube' && place.at === 'side' && place.side === 'right');

/** How far off tubes and joints are drawn, mm. */
const OFF = { long: 170, joints: 190 };

export const scene: WorkScene = slideWork({
  drawnOff: (way, step) => (pushesLong(step) ? OFF.long : Math.min(way, OFF.joints)),
  isShown: (part, step) => !pushesLong(step) || !isAtRightEnd(part),
});
