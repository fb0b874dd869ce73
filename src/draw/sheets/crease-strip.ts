import type { Model, Vec2 } from '../../model/index.ts';
import { area, line } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { depthFigures, holeSection } from '../flat/hole-marks.ts';
import { holeLines } from '../flat/panel-lines.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { acrossStrip, onStrip, stripHole } from './strip-marks.ts';
import { holeAcross, holeLane, stripWidth, type Strip, type StripFigure } from './strip.ts';
import { tell } from '../../scene/index.ts';

/** Paper beyond the innermost line of either face, mm. */
const beyond = 8;
/** Where the lines' figures stand: counted from the inside line; those of the pins are counted from the panel's edge. */
const lineLane = 9;
/** Of the panel's section that tells how deep the inner hole is: from the strip's left edge, and under that hole. */
const sectionAcross = 14;
const sectionUnder = 6;
/** From a line to the middle of its figure, mm. */
const figureOver = 2.9;

/**
 * Folds round the panel's edge, so that a mark comes to both faces: first the inner face from the pins' places in
 * the middle part out to the edge, then the panel's thickness, then the outer face back to the inside line. The
 * distances are those of the flat pattern; its flaps have the same lines on all sides.
 */
export function creaseStrip({ pattern }: Model): Strip {
  const [flap] = pattern.flaps;
  if (flap === undefined || pattern.flaps.some((other) => String(other.creases) !== String(flap.creases) || other.edge !== flap.edge)) {
    throw new RangeError('the flaps of a pattern must have the same lines on all sides: one strip serves them all');
  }
  const holes = holeLines(pattern);
  const inner = Math.min(0, ...holes.map(({ outwards }) => outwards));
  const face = flap.edge - inner + beyond;
  const turn = face + pattern.thickness;
  const onInner = (outwards: number): number => face - (flap.edge - outwards);
  const onOuter = (outwards: number): number => turn + (flap.edge - outwards);
  const lines = [
    { pen: pens.inside, outwards: 0 },
    ...flap.creases.map((outwards) => ({ pen: pens.crease, outwards })),
    { pen: pens.halfCut, outwards: flap.halfCut },
  ];
  const blind = holes.map(({ hole }) => hole).filter(({ depth }) => depth !== null);
  const cutThrough: Vec2 = [sectionAcross, onInner(inner) + sectionUnder];
  const length = onOuter(0) + beyond;
  const figures: readonly StripFigure[] = [
    ...lines.flatMap(({ outwards }) => [onInner, onOuter].map((onFace) => ({ at: onFace(outwards) - figureOver, across: lineLane, told: tell.mm(outwards) }))),
    ...holes.map(({ outwards }) => ({ at: onInner(outwards), across: holeLane, told: tell.mm(flap.edge - outwards) })),
    ...blind.flatMap((hole) => depthFigures(hole, pattern, cutThrough)).map(({ at: [across, at], told }) => ({ at, across, told })),
  ];
  return {
    kind: 'creases',
    length,
    figures,
    places: [...lines.flatMap(({ outwards }) => [onInner(outwards), onOuter(outwards)]), ...holes.map(({ outwards }) => onInner(outwards)), face, turn],
    draw: (view) => [
      ...lines.flatMap(({ pen, outwards }) => [acrossStrip(view, pen, onInner(outwards)), acrossStrip(view, pen, onOuter(outwards))]),
      ...holes.flatMap(({ outwards, hole }) => stripHole(view, onInner(outwards), holeAcross, hole)),
      ...blind.flatMap((hole) => holeSection(hole, pattern, onStrip(view, cutThrough[1], cutThrough[0]))),
      acrossStrip(view, pens.paperFold, face),
      acrossStrip(view, pens.paperFold, turn),
      ...edgeSign(view, face, pattern.thickness),
    ],
  };
}

/** In the panel's thickness: the end of a panel with the strip folded round it. */
function edgeSign(view: Fit, at: number, thickness: number): readonly Mark[] {
  const half = Math.min(1.6, thickness / 4);
  const middle = at + thickness / 2;
  const left = stripWidth / 2 - 6;
  const spot = (along: number, across: number): Vec2 => onStrip(view, middle + along, left + across);
  const round = half + 0.9;
  return [
    area('panel', [spot(-half, 0), spot(-half, 9), spot(half, 9), spot(half, 0)]),
    line(pens.tick, spot(-half, 0), spot(-half, 9), spot(half, 9), spot(half, 0)),
    line(pens.cut, spot(-round, 1), spot(-round, 10), spot(round, 10), spot(round, 1)),
  ];
}
