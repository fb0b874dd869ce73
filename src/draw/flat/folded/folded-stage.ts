import { flatHoles, type Bend, type Pattern, type Side, type Vec2 } from '../../../model/index.ts';
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
import { cornersOf } from '../../kit/geometry.ts';
import { cutOnBoard, ON_BOARD } from '../cut-on-board.ts';
import { keptSign } from '../kept-sign.ts';
import { wasteMarks } from '../waste.ts';
import { columnBox, mainBox, noRoom } from '../stages/layout.ts';
import { stepPaper } from '../step-paper.ts';
import { signOnPattern } from '../sign-place.ts';
import { turnedOver, turnSign, type SignSeen } from '../marked-face.ts';
import { tell } from '../../../scene/index.ts';
import { bendLines, bendMarks, blankRing, blankSides, patternHoles, patternOutline, firstMarks } from './bend-lines.ts';
import { edgeBesideCut } from '../edge-beside-cut.ts';
import { coordinateGap, coordinateMarks, holePlaces, outlinePlaces, punchedFlat, firstPlaces, withSizes, type Coordinates } from './coordinates.ts';
import { panelFaces, seenFrom, type PanelFace } from './faces.ts';
import { flapKinds } from './flap-kinds.ts';
import { holeLegend, legendHeight } from '../hole-marks.ts';
import { holeSections, punchHeight } from '../punch-picture.ts';
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
 * One step of marking or cutting any panel that is folded, whichever sides its flaps are on: a picture of the marked face
 * and, where something is done on the other, one of the panel turned over, with the turns before and after it. What is new
 * is black, what earlier steps left on that face is thin; all is measured from one corner of the blank; flaps of one kind
 * have a numeral, and one enlarged strip tells their lines. Throws a RangeError when the paper is too small.
 */
export const foldedPictures = (pattern: Pattern, marking: Marking, paper: Paper = stepPaper): readonly DrawnPicture[] =>
  facesOf(pattern, marking.stage).map((face) => {
    const own = { ...paper, height: paper.height + (marking.stage === 'holes' && areBlind(pattern) ? punchHeight : 0) };
    return toPicture(own, foldedMarks(pattern, marking, own, face));
  });

/** The faces that a stage works on. */
export const facesOf = (pattern: Pattern, stage: Marking['stage']): readonly PanelFace[] => panelFaces.filter((face) => {
  const seen = seenFrom(pattern, face);
  const { flaps } = seen;
  const bent = (is: readonly Bend['is'][]): boolean => flaps.some((flap) => [flap, ...flap.lugs].some(({ bends: own }) => own.some((bend) => is.includes(bend.is))));
  switch (stage) {
    case 'creases': return bent(['crease', 'half-cut']);
    case 'crease': return bent(['crease']);
    case 'half-cut': return bent(['half-cut']);
    case 'holes': return punchedFlat(seen, face).length > 0;
    default: return face === 'marked';
  }
});

/** The marks of the picture, for the tests. */
export function foldedMarks(pattern: Pattern, marking: Marking, paper: Paper, face: PanelFace = 'marked'): readonly Mark[] {
  const lying: Lying = { pattern: seenFrom(pattern, face), face, isSectioned: areBlind(pattern) };
  if (face === 'marked') return onFace(lying, marking, paper);
  const low = { ...paper, height: paper.height - 2 * turnSign.height };
  const right = paper.width - turnSign.width - signsLeft;
  return [
    ...turnedOver([signsLeft, 0.5], 'below'),
    { mark: 'placed', at: [0, turnSign.height], marks: onFace(lying, marking, low) },
    ...turnedOver([right, paper.height - turnSign.height - 0.5], 'up'),
  ];
}

/** A panel as it lies, with the face that is up. */
interface Lying {
  readonly pattern: Pattern;
  readonly face: PanelFace;
  /** Whether its holes are told by large sections: some are blind. */
  readonly isSectioned: boolean;
}

function onFace(lying: Lying, marking: Marking, paper: Paper): readonly Mark[] {
  const { pattern, face } = lying;
  const roots = (view: Fit): readonly Mark[] => (face === 'marked' ? firstMarks(pattern, view, earlier(pens.inside)) : []);
  switch (marking.stage) {
    case 'blank': return blankStage(marking.laid ?? blankSides(pattern), marking.stock, paper, marking.kept);
    case 'inside': return measured(lying, withSizes(pattern, firstPlaces(pattern)), paper, (view) => [blankLine(pattern, view), ...firstMarks(pattern, view, pens.newInside)], null, 'new');
    case 'creases': return stripped(lying, 'mark', paper, (view) => [blankLine(pattern, view), ...roots(view), ...bends(pattern, view, 'mark')]);
    case 'notches': return measured(lying, outlinePlaces(pattern), paper, (view) => [blankLine(pattern, view), ...bends(pattern, view, null), patternOutline(pattern, view, pens.cut)], snipOf(pattern));
    case 'holes': return measured(lying, holePlaces(pattern, face), paper, (view) => [...bends(pattern, view, null), ...marked(lying, view), ...patternHoles(punchedFlat(pattern, face), view, { ...pens.hole, width: 0.5 })], holeSign(lying, paper.width - 2 * signsLeft));
    case 'notches-cut': return notched(lying, paper, marking.keptFor);
    case 'crease': return stripped(lying, 'crease', paper, (view) => cutAndBent(pattern, view, 'crease'));
    case 'half-cut': return stripped(lying, 'half-cut', paper, (view) => [...cutAndBent(pattern, view, 'half-cut'), ...guided(pattern, view)], { wide: knifeWidth, draw: (box) => knifeInPanel(pattern, box, face === 'marked' ? 'upper' : 'lower') });
  }
}

/** What is drawn of the outline before it is cut: on the marked face alone. */
const marked = ({ pattern, face }: Lying, view: Fit): readonly Mark[] => [face === 'marked' ? patternOutline(pattern, view, earlier(pens.cut)) : blankLine(pattern, view)];

const signOf = ({ pattern, face }: Lying, view: Fit, sign: SignSeen = 'there'): readonly Mark[] => signOnPattern(middleHalf(pattern), view, face === 'marked' ? sign : 'behind', pattern.holes);

/** Half the sides of the middle part, between the lines that are marked first. */
function middleHalf({ flaps, max }: Pattern): Vec2 {
  const least = (sides: readonly Side[], whole: number): number => Math.min(whole, ...flaps.flatMap(({ side, root, line }) => (sides.includes(side) ? [root + line] : [])));
  return [least(['left', 'right'], max[0]), least(['front', 'back'], max[1])];
}

interface TallSign {
  readonly height: number;
  readonly draw: Sign;
}

function snipOf(pattern: Pattern): TallSign | null {
  const draw = snipSign(pattern);
  return draw === undefined || draw === null ? null : { height: signsHeight, draw };
}

const areBlind = (pattern: Pattern): boolean => flatHoles(pattern).some(({ depth }) => depth !== null);

/** What the marks of its holes mean; where some of the panel are blind, how each kind is punched from the face that is up. */
function holeSign({ pattern, face, isSectioned }: Lying, width: number): TallSign {
  const holes = punchedFlat(pattern, face);
  return isSectioned
    ? { height: punchHeight + 2, draw: (x, y) => [{ mark: 'placed', at: [x, y + 1], marks: holeSections({ ...pattern, holes }, width, face === 'marked' ? 'up' : 'down') }] }
    : { height: legendHeight(holes, width) + 2, draw: (x, y) => holeLegend(holes, pattern, { x, y, width }) };
}

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

/** The straight-edge beside each half-cut. */
const guided = (pattern: Pattern, view: Fit): readonly Mark[] =>
  bendLines(pattern).filter(({ is }) => is === 'half-cut').flatMap(({ ends }) => edgeBesideCut(view, ends, [0, 0], pattern.thickness));

/** The whole panel on its light ground. */
const wholeMark = (pattern: Pattern, view: Fit, isNotched: boolean, marks: readonly Mark[]): Mark =>
  ({ mark: 'view', name: 'whole', scale: view.scale, marks: [area('panel', allOnPaper(view, isNotched ? pattern.outline : blankRing(pattern))), ...marks] });

/** The whole panel with places measured from one corner. */
function measured(lying: Lying, places: Coordinates, paper: Paper, draw: (view: Fit) => readonly Mark[], sign: TallSign | null = null, seen: SignSeen = 'there'): readonly Mark[] {
  const { pattern, face } = lying;
  const [across, up] = places.map((each) => coordinateGap + runningReach(each.map(tell.mm), cap));
  const low = sign?.height ?? 0;
  const box = mainBox(paper, 0, { ...noRoom, left: up ?? 0, bottom: (across ?? 0) + low });
  const view = fitToScale({ min: pattern.min, max: pattern.max }, box);
  const blank = boxOnPaper(view, { min: pattern.min, max: pattern.max });
  return [
    wholeMark(pattern, view, false, [...draw(view), ...signOf(lying, view, seen)]),
    ...coordinateMarks(pattern, places, view, blank, cap, { x: [0.5, paper.width - 0.5], y: [0.5, paper.height - 0.5] }, face),
    ...(sign?.draw(signsLeft, paper.height - low + 1) ?? []),
  ];
}

/** The whole panel with its flaps numbered by kind, beside it a strip for each kind, and at the edge what else belongs to the work. */
function stripped(lying: Lying, work: StripWork, paper: Paper, draw: (view: Fit) => readonly Mark[], beside?: { readonly wide: number; readonly draw: (box: Box) => readonly Mark[] }): readonly Mark[] {
  const { pattern, face } = lying;
  const kinds = flapKinds(pattern, face === 'marked').filter((kind) => work === 'mark' || kind.bends.some(({ is }) => is === work));
  const last = beside?.wide ?? 0;
  const span = kinds.reduce((sum, kind) => sum + kindWidth(kind, work, pattern.thickness), 0) + last;
  const view = fitToScale({ min: pattern.min, max: pattern.max }, mainBox(paper, span, noRoom));
  const column: Box = columnBox(paper, span);
  return [
    wholeMark(pattern, view, work !== 'mark', [...draw(view), ...signOf(lying, view)]),
    ...kindNumerals(kinds, view),
    ...kindStrips(kinds, work, pattern.thickness, { ...column, width: column.width - last }, face),
    ...(beside?.draw({ x: column.x + column.width - last, y: column.y, width: last, height: Math.min(column.height, knifeHeight) }) ?? []),
  ];
}

/** The notches and snips cut out, what falls off left white; on a board; beside that the sign of the step that needs some of what falls off. */
function notched(lying: Lying, paper: Paper, keptFor: readonly number[] = []): readonly Mark[] {
  const { pattern } = lying;
  const view = fitToScale({ min: pattern.min, max: pattern.max }, mainBox(paper, 0, { ...noRoom, bottom: ON_BOARD.height + 3 }));
  const low = paper.height - ON_BOARD.height - 1;
  const kept = { x: signsLeft + ON_BOARD.width + 6, y: low, width: 52, height: ON_BOARD.height };
  return [...cutOnBoard([signsLeft, low]), ...(keptFor.length === 0 ? [] : [...wasteMarks(cornersOf(kept)), ...keptSign(kept, keptFor)]), wholeMark(pattern, view, true, [
    blankLine(pattern, view), ...firstMarks(pattern, view, earlier(pens.inside)), ...bends(pattern, view, null),
    ...patternHoles(flatHoles(pattern), view, earlier(pens.hole)), patternOutline(pattern, view, { ...pens.cut, width: 0.7 }), ...signOf(lying, view),
  ])];
}
