import { chained, dot, lengthOf, type Model } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { BEHIND_VIEW, STANDARD_VIEW } from './views.ts';

/** What is put in or drilled from a side that is turned away from the eye by more than this (the cosine) is hidden by what it goes into. */
const HIDDEN = -0.6;

/**
 * Whether all that a step drills or pins is hidden from the usual view, since it is done from behind: then the worker walks round
 * the work, and the step is seen from there.
 */
export function isFromBehind(model: Model, step: Step): boolean {
  const fresh = [...step.drillsFor, ...step.newParts.flatMap(({ ids }) => ids)];
  const pins = model.connections.flatMap((each) => (each.is === 'pin' && fresh.includes(each.pin) ? [each.pin] : []));
  const eye = STANDARD_VIEW.towardsEye;
  return pins.length > 0 && model.parts.filter(({ id }) => pins.includes(id))
    .every(({ pose }) => dot(turnedBy(chained(step.standing.pose, pose), [0, 0, 1]), eye) / lengthOf(eye) < HIDDEN);
}

/** From where a step is seen. */
export const viewOf = (model: Model, step: Step): View => (isFromBehind(model, step) ? BEHIND_VIEW : STANDARD_VIEW);
