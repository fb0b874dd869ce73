import type { Model } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { brakePicture, endTrial, type Braked, type EndFitting } from '../flat/index.ts';
import type { DrawnFlat } from './work-picture.ts';

/** A fitting in the end of a tube, and that tube's outside, mm. */
interface Fitted {
  readonly fitting: EndFitting;
  readonly outside: number;
}

/** How an end is fitted and tried, at the first step that fits one of its form: a plate or a castor. */
export const endsTried: DrawnFlat = ({ model, plan, papers: { bench } }, step) => {
  const earlier = plan.steps.filter(({ number }) => number < step.number).flatMap((each) => endsOf(model, each)).map(formOf);
  const fresh = endsOf(model, step);
  const first = fresh.filter((each, index) => !earlier.includes(formOf(each)) && fresh.findIndex((other) => formOf(other) === formOf(each)) === index);
  return first.map(({ fitting, outside }) => endTrial(fitting, outside, bench));
};

/** How the brake of a castor is set as soon as it is fitted, before the work stands on it. */
export const brakesSet: DrawnFlat = ({ model, papers: { bench } }, step) => brakedOf(model, [step]).map((braked) => brakePicture(braked, 'lying', bench));

/** That the brakes are set where work is stood up on castors. */
export const brakesLocked: DrawnFlat = ({ model, plan, papers: { bench } }, step) =>
  brakedOf(model, plan.steps.filter(({ number }) => number < step.number)).map((braked) => brakePicture(braked, 'standing', bench));

/** The castors with a brake that steps fit, as one kind: the first of them; none where they fit none. */
function brakedOf(model: Model, steps: readonly Step[]): readonly Braked[] {
  const braked = steps.flatMap((step) => endsOf(model, step)).flatMap(({ fitting }) => (fitting.is === 'castor' && fitting.brake ? [fitting] : []));
  return braked.slice(0, 1).map((castor) => ({ castor, count: braked.length }));
}

const formOf = ({ fitting }: Fitted): 'castor' | 'plate' => (fitting.is === 'castor' ? 'castor' : 'plate');

/** What a step fits into the ends of tubes. */
function endsOf({ parts }: Model, { action, newParts }: Step): readonly Fitted[] {
  if (action !== 'fit-end') return [];
  const fresh = newParts.flatMap(({ ids }) => ids);
  return parts.flatMap(({ id, shape }): readonly Fitted[] => {
    if (shape.form !== 'fitting' || !fresh.includes(id)) return [];
    const { fitting, outside } = shape;
    return fitting.is === 'castor' || fitting.is === 'foot-plate' || fitting.is === 'end-cap' ? [{ fitting, outside }] : [];
  });
}
