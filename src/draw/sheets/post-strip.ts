import type { Model } from '../../model/index.ts';
import { area, line } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { madeAlike, postKinds } from '../post-kinds.ts';
import { acrossStrip, onStrip, stripHole, throughHole } from './strip-marks.ts';
import { holeAcross, holeLane, stripWidth, type Strip } from './strip.ts';
import { tell } from '../../scene/index.ts';
import { hatching } from '../kit/hatching.ts';

/** Paper beyond the foot, for the floor's sign, mm. */
const floor = 5;
const markLane = 9;
const figureOver = 2.9;

/** A strip for each kind of post, from the foot up: where the lower end of every joint's sleeve comes, and its pin. */
export function postStrips(model: Model): readonly Strip[] {
  const { kit } = model;
  return postKinds(model, madeAlike).map(({ length, marks, holes }) => {
    const sleeve = kit.joint.sleeveAbove + kit.joint.sleeveBelow;
    return {
      kind: 'posts',
      length: floor + length,
      figures: [
        ...marks.map((mark) => ({ at: floor + mark - figureOver, across: markLane, told: tell.mm(mark) })),
        ...holes.map((hole) => ({ at: floor + hole, across: holeLane, told: tell.mm(hole) })),
        { at: floor + length - figureOver, across: markLane, told: tell.mm(length) },
      ],
      places: [0, floor, floor + length, ...marks.flatMap((mark) => [floor + mark, floor + mark + sleeve]), ...holes.map((hole) => floor + hole)],
      draw: (view) => [
        ...marks.flatMap((mark) => sleeveMarks(view, floor + mark, sleeve)),
        ...holes.flatMap((hole) => stripHole(view, floor + hole, holeAcross, throughHole(kit.jointPin.diameter))),
        ...footMarks(view),
        acrossStrip(view, pens.cut, floor + length),
      ],
    };
  });
}

/** Where a sleeve will sit, and thick its lower end, which stands on the mark. */
function sleeveMarks(view: Fit, at: number, sleeve: number): readonly Mark[] {
  const ring = [onStrip(view, at, 0), onStrip(view, at, stripWidth), onStrip(view, at + sleeve, stripWidth), onStrip(view, at + sleeve, 0)];
  return [area('core', ring), acrossStrip(view, pens.edge, at + sleeve), acrossStrip(view, pens.cut, at)];
}

/** The floor with its hatching, above the foot's end of the strip. */
function footMarks(view: Fit): readonly Mark[] {
  const ring = [onStrip(view, 0, 0), onStrip(view, 0, stripWidth), onStrip(view, floor, stripWidth), onStrip(view, floor, 0)];
  return [...hatching(ring, 1.8).map(([from, to]) => line(pens.edge, from, to)), acrossStrip(view, pens.motion, floor)];
}
