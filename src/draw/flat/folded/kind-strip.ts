import type { Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { runningDimension, runningReach } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { area, arrowhead, figure, line, orderRadius, outline, ringedNumeral } from '../../kit/marks.ts';
import { earlier, pens, type Pen } from '../../kit/pens.ts';
import { fittingScale, onPaper, type Fit } from '../../kit/fit.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { spread } from '../../kit/spread.ts';
import { tell } from '../../../scene/index.ts';
import { stripStart, type FlapKind } from './flap-kinds.ts';
import type { PanelFace } from './faces.ts';
import { markedFace, signRoom } from '../marked-face.ts';

/** What is done along the lines of a strip: marked at their distances, creased, or cut half through. */
export type StripWork = 'mark' | 'crease' | 'half-cut';

const cap = capHeights.pattern;
const stripWidth = 10;
const beyondEdge = 3;
const gap = 4;
/** Under a strip: its kind's numeral and how many there are. */
const foot = 9;
/** Beside a strip that is worked on: order numerals, arrows, the panel's section, the sign where the marked face is the far one. */
const numeralColumn = 5;
const arrowLength = 5;

/** Paper width of a strip with what stands beside it, mm. */
export function kindWidth(kind: FlapKind, work: StripWork, thickness: number): number {
  return stripWidth + gap + (work === 'mark'
    ? gap + runningReach(placesOf(kind).map(tell.mm), cap)
    : numeralColumn + arrowLength + signRoom + Math.max(2, thickness * 0.3));
}

/** Where a strip ends while it is worked on: where it is marked, nothing is cut off yet. */
const stripTop = ({ edge, datum }: FlapKind, work: StripWork): number => (work === 'mark' ? Math.max(edge, datum) : edge);

/** What of a kind is measured, from its root line: its bends and, from the line, its free edge too. */
const measuredOf = ({ bends, edge, measuredFrom }: FlapKind): readonly number[] => [...bends.map(({ at }) => at), ...(measuredFrom === 'line' ? [edge] : [])];

const placesOf = (kind: FlapKind): readonly number[] => measuredOf(kind).map((at) => Math.abs(at - kind.datum));

/** The strips of all kinds of flaps side by side at one scale, from the left of a box, each with its numeral and its count. */
export function kindStrips(kinds: readonly FlapKind[], work: StripWork, thickness: number, box: Box, face: PanelFace = 'marked'): readonly Mark[] {
  const tallest = Math.max(...kinds.map((kind) => stripTop(kind, work) - stripStart(kind)));
  const scale = fittingScale([0, tallest], [box.width, box.height - foot - beyondEdge]);
  return kinds.flatMap((kind, index) => {
    const x = box.x + kinds.slice(0, index).reduce((sum, before) => sum + kindWidth(before, work, thickness), 0);
    return oneStrip(kind, index + 1, work, thickness, { scale, x, bottom: box.y + box.height - foot, face });
  });
}

interface Placed {
  readonly scale: number;
  readonly x: number;
  readonly bottom: number;
  /** The face that is up. */
  readonly face: PanelFace;
}

function oneStrip(kind: FlapKind, number: number, work: StripWork, thickness: number, { scale, x, bottom, face }: Placed): readonly Mark[] {
  const start = stripStart(kind);
  const top = stripTop(kind, work);
  const y = (out: number): number => bottom - (out - start) * scale;
  const frame: Box = { x, y: y(top) - beyondEdge, width: stripWidth, height: bottom - y(top) + beyondEdge };
  const across = (pen: Pen, out: number): Mark => line(pen, [x, y(out)], [x + stripWidth, y(out)]);
  const pen = (is: 'crease' | 'half-cut'): Pen => {
    const own = is === 'crease' ? pens.crease : pens.halfCut;
    return work === 'mark' || work === is ? own : earlier(own);
  };
  return [
    { mark: 'view', name: `flap-${number}`, scale, marks: [
      area('panel', cornersOf({ ...frame, y: y(top), height: bottom - y(top) })),
      across(earlier(pens.cut), top),
      ...(kind.measuredFrom === 'line' ? [across(work === 'mark' ? pens.inside : earlier(pens.inside), kind.datum)] : []),
      ...kind.bends.map(({ is, at }) => across(pen(is), at)),
    ] },
    outline(pens.ring, cornersOf(frame)),
    ...(work === 'mark' ? distances(kind, x + stripWidth, y) : worked(kind, work, { deep: thickness * scale, right: x + stripWidth, face, y })),
    ...kindFoot(kind, number, [x, bottom]),
  ];
}

function distances(kind: FlapKind, right: number, y: (out: number) => number): readonly Mark[] {
  return runningDimension({
    axis: 'y', datum: y(kind.datum), line: right + gap, feature: right, cap,
    stations: measuredOf(kind).map((at) => ({ at: y(at), told: tell.mm(Math.abs(at - kind.datum)) })),
  });
}

/** The panel's section beside the strip, the face that is up at the left, and arrows onto that; the sign on the marked one; creases with their places in the order of bending. */
function worked(kind: FlapKind, work: 'crease' | 'half-cut', { deep, right, face: up, y }: { readonly deep: number; readonly right: number; readonly face: PanelFace; readonly y: (out: number) => number }): readonly Mark[] {
  const face = right + numeralColumn + arrowLength;
  const section: readonly Vec2[] = [[face, y(kind.edge)], [face + deep, y(kind.edge)], [face + deep, y(stripStart(kind))], [face, y(stripStart(kind))]];
  return [
    area('core', section),
    outline(pens.cut, section),
    ...(work === 'crease' ? orderFigures(kind, right + numeralColumn / 2, y) : []),
    ...kind.bends.flatMap((bend): readonly Mark[] => {
      if (bend.is !== work) return [];
      const at = y(bend.at);
      return [line(pens.motion, [face + 1.6 - arrowLength, at], [face - 1.4, at]), arrowhead([face + 0.6, at], [1, 0], 3)];
    }),
    ...(up === 'marked' ? markedFace([face, y(kind.edge) + 3.5], 'left') : markedFace([face + deep, y(kind.edge) + 3.5], 'right')),
  ];
}

/** The place of each crease among the creases in the order of bending, apart from each other where the creases are close. */
function orderFigures({ bends, order }: FlapKind, x: number, y: (out: number) => number): readonly Mark[] {
  const inOrder = order.filter((place) => bends[place]?.is === 'crease');
  const creases = bends.flatMap(({ is, at }, place) => (is === 'crease' ? [{ at: y(at), told: tell.number(inOrder.indexOf(place) + 1) }] : [])).sort((a, b) => a.at - b.at);
  return spread(creases.map(({ at }) => at), creases.map(() => cap + 0.6)).flatMap((at, index) => {
    const crease = creases[index];
    return crease === undefined ? [] : [figure(crease.told, [x, at], cap, 700)];
  });
}

function kindFoot(kind: FlapKind, number: number, [x, bottom]: Vec2): readonly Mark[] {
  const radius = orderRadius(tell.number(number), cap);
  const y = bottom + foot / 2 + 1;
  return [
    ringedNumeral(tell.number(number), [x + radius, y], cap, pens.edge),
    figure(tell.times(kind.places.length), [x + 2 * radius + 7, y], capHeights.count, 700),
  ];
}

/** The numeral of its kind on every flap of the whole view, inside its free edge, and beside every lug. */
export function kindNumerals(kinds: readonly FlapKind[], view: Fit): readonly Mark[] {
  const away = orderRadius(tell.number(1), cap) + 0.5;
  return kinds.flatMap(({ places, of }, index) => places.map(({ at, outwards }): Mark => {
    const [x, y] = onPaper(view, at);
    const by = of === 'flap' ? -away : away;
    return ringedNumeral(tell.number(index + 1), [x + outwards[0] * by, y - outwards[1] * by], cap, pens.edge);
  }));
}
