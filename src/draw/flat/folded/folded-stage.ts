import { flatHoles, type Pattern } from '../../../model/index.ts';
import type { Box, DrawnPicture } from '../../types.ts';
import { runningReach } from '../../kit/dimension.ts';
import { allOnPaper, boxOnPaper, fitToScale, type Fit } from '../../kit/fit.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, outline, type Mark } from '../../kit/marks.ts';
import { earlier, pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { Marking } from '../marking-picture.ts';
import { blankStage } from '../stages/blank.ts';
import { knifeInPanel } from '../stages/half-cut.ts';
import { columnBox, mainBox, noRoom } from '../stages/layout.ts';
import { stepPaper } from '../step-paper.ts';
import { tell } from '../../../scene/index.ts';
import { bendMarks, blankRing, blankSides, patternHoles, patternOutline, rootMarks } from './bend-lines.ts';
import { coordinateGap, coordinateMarks, holePlaces, outlinePlaces, punchedFlat, rootPlaces, type Coordinates } from './coordinates.ts';
import { flapKinds, isMadeInside } from './flap-kinds.ts';
import { holeLegend, legendHeight } from '../hole-marks.ts';
import { kindNumerals, kindStrips, kindWidth, type StripWork } from './kind-strip.ts';
import type { Sign } from './sign.ts';
import { snipSign } from './snip-sign.ts';

const cap = capHeights.pattern;
/** Under the whole view, for the snip of the tabs. */
const signsHeight = 9;
/** At the left of what stands under the whole view, and between that and the view, mm. */
const signsLeft = 2;
/** The knife in the panel beside the strips of a half-cut. */
const knifeWidth = 46;
const knifeHeight = 55;

/**
 * One step of marking or cutting any panel that is folded, inner face up, whichever sides its flaps are on: what is new is
 * black and measured from the blank's lower left corner, what earlier steps left is thin; flaps of one kind have a
 * numeral, and one enlarged strip tells their lines. Throws a RangeError when the paper is too small.
 */
export function foldedPicture(pattern: Pattern, marking: Marking, paper: Paper = stepPaper): DrawnPicture {
  return toPicture(paper, foldedMarks(pattern, marking, paper));
}

/** The marks of the picture, for the tests. */
export function foldedMarks(pattern: Pattern, marking: Marking, paper: Paper): readonly Mark[] {
  switch (marking.stage) {
    case 'blank': return blankStage(blankSides(pattern), marking.stock, paper);
    case 'inside': return measured(pattern, rootPlaces(pattern), paper, (view) => [blankLine(pattern, view), ...rootMarks(pattern, view, pens.newInside)]);
    case 'creases': return stripped(pattern, 'mark', paper, (view) => [blankLine(pattern, view), ...rootMarks(pattern, view, earlier(pens.inside)), ...bends(pattern, view, 'mark')]);
    case 'notches': return measured(pattern, outlinePlaces(pattern), paper, (view) => [blankLine(pattern, view), ...bends(pattern, view, null), patternOutline(pattern, view, pens.cut)], snipOf(pattern));
    case 'holes': return measured(pattern, holePlaces(pattern), paper, (view) => [...bends(pattern, view, null), patternOutline(pattern, view, earlier(pens.cut)), ...patternHoles(punchedFlat(pattern), view, { ...pens.hole, width: 0.5 })], holeSign(pattern, paper.width - 2 * signsLeft));
    case 'notches-cut': return notched(pattern, paper);
    case 'crease': return stripped(pattern, 'crease', paper, (view) => cutAndBent(pattern, view, 'crease'));
    case 'half-cut': return stripped(pattern, 'half-cut', paper, (view) => cutAndBent(pattern, view, 'half-cut'), { wide: knifeWidth, draw: (box) => knifeInPanel(pattern, box, isCutInside(pattern) ? 'upper' : 'lower') });
  }
}

/** Whether all half-cuts are made on the face that bears the marks. */
const isCutInside = (pattern: Pattern): boolean => flapKinds(pattern).every(({ bends: all }) => all.every((bend) => bend.is !== 'half-cut' || isMadeInside(bend)));

interface TallSign {
  readonly height: number;
  readonly draw: Sign;
}

function snipOf(pattern: Pattern): TallSign | null {
  const draw = snipSign(pattern);
  return draw === undefined || draw === null ? null : { height: signsHeight, draw };
}

const holeSign = (pattern: Pattern, width: number): TallSign =>
  ({ height: legendHeight(punchedFlat(pattern), width) + 2, draw: (x, y) => holeLegend(punchedFlat(pattern), pattern, { x, y, width }) });

const blankLine = (pattern: Pattern, view: Fit): Mark => outline(earlier(pens.cut), allOnPaper(view, blankRing(pattern)));

/** Creases and half-cuts, those of the work thick. */
function bends(pattern: Pattern, view: Fit, work: StripWork | null): readonly Mark[] {
  const pen = (is: 'crease' | 'half-cut') => {
    const own = is === 'crease' ? pens.crease : pens.halfCut;
    return work === 'mark' || work === is ? own : earlier(own);
  };
  return [...bendMarks(pattern, 'crease', view, pen('crease')), ...bendMarks(pattern, 'half-cut', view, pen('half-cut'))];
}

const cutAndBent = (pattern: Pattern, view: Fit, work: StripWork): readonly Mark[] =>
  [patternOutline(pattern, view, earlier(pens.cut)), ...patternHoles(flatHoles(pattern), view, earlier(pens.hole)), ...bends(pattern, view, work)];

/** The whole panel on its light ground. */
const wholeMark = (pattern: Pattern, view: Fit, isNotched: boolean, marks: readonly Mark[]): Mark =>
  ({ mark: 'view', name: 'whole', scale: view.scale, marks: [area('panel', allOnPaper(view, isNotched ? pattern.outline : blankRing(pattern))), ...marks] });

/** The whole panel with places measured from its lower left corner. */
function measured(pattern: Pattern, places: Coordinates, paper: Paper, draw: (view: Fit) => readonly Mark[], sign: TallSign | null = null): readonly Mark[] {
  const [across, up] = places.map((each) => coordinateGap + runningReach(each.map(tell.mm), cap));
  const low = sign?.height ?? 0;
  const box = mainBox(paper, 0, { ...noRoom, left: up ?? 0, bottom: (across ?? 0) + low });
  const view = fitToScale({ min: pattern.min, max: pattern.max }, box);
  const blank = boxOnPaper(view, { min: pattern.min, max: pattern.max });
  return [
    wholeMark(pattern, view, false, draw(view)),
    ...coordinateMarks(pattern, places, view, blank, cap, { x: [0.5, paper.width - 0.5], y: [0.5, paper.height - 0.5] }),
    ...(sign?.draw(signsLeft, paper.height - low + 1) ?? []),
  ];
}

/** The whole panel with its flaps numbered by kind, beside it a strip for each kind, and at the edge what else belongs to the work. */
function stripped(pattern: Pattern, work: StripWork, paper: Paper, draw: (view: Fit) => readonly Mark[], beside?: { readonly wide: number; readonly draw: (box: Box) => readonly Mark[] }): readonly Mark[] {
  const kinds = flapKinds(pattern).filter((kind) => work === 'mark' || kind.bends.some(({ is }) => is === work));
  const last = beside?.wide ?? 0;
  const span = kinds.reduce((sum, kind) => sum + kindWidth(kind, work, pattern.thickness), 0) + last;
  const view = fitToScale({ min: pattern.min, max: pattern.max }, mainBox(paper, span, noRoom));
  const column: Box = columnBox(paper, span);
  return [
    wholeMark(pattern, view, work !== 'mark', draw(view)),
    ...kindNumerals(kinds, view),
    ...kindStrips(kinds, work, pattern.thickness, { ...column, width: column.width - last }),
    ...(beside?.draw({ x: column.x + column.width - last, y: column.y, width: last, height: Math.min(column.height, knifeHeight) }) ?? []),
  ];
}

/** The notches and snips cut out, what falls off left white. */
function notched(pattern: Pattern, paper: Paper): readonly Mark[] {
  const view = fitToScale({ min: pattern.min, max: pattern.max }, mainBox(paper, 0, noRoom));
  return [wholeMark(pattern, view, true, [
    blankLine(pattern, view), ...rootMarks(pattern, view, earlier(pens.inside)), ...bends(pattern, view, null),
    ...patternHoles(flatHoles(pattern), view, earlier(pens.hole)), patternOutline(pattern, view, { ...pens.cut, width: 0.7 }),
  ])];
}
