import type { Vec2 } from '../../model/index.ts';
import { area, arrowhead, figure, line, outline } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { registerMark, scissors } from './paper-marks.ts';
import type { PlacedPictogram } from './sheet.ts';
import type { Strip } from './strip.ts';
import { tell } from '../kit/told.ts';
import { boxWindow } from '../kit/clip.ts';
import { clipMarks } from '../kit/clip-marks.ts';

/** Small drawings without words, each with its pictograms. Places in mm of the sheet. */
export interface HowTo {
  readonly marks: readonly Mark[];
  readonly glyphs: readonly PlacedPictogram[];
}

const ring = (x: number, y: number, width: number, height: number): readonly Vec2[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];

const verdict = (name: 'right' | 'wrong', x: number, y: number): PlacedPictogram => ({ name, box: { x, y, width: 8, height: 8 } });

/** A rule laid along the check bar: the print is true where both end together. */
export function measureFirst(x: number, y: number): HowTo {
  const one = (left: number, bar: number, name: 'right' | 'wrong'): HowTo => ({
    marks: [...barWithRule(left, y, bar)],
    glyphs: [verdict(name, left + 65, y + 2)],
  });
  return joined(one(x, 58, 'right'), one(x + 98, 53, 'wrong'));
}

const ruleLength = 58;

function barWithRule(x: number, y: number, bar: number): readonly Mark[] {
  const at = (share: number, length: number): number => x + share * length;
  const shares = Array.from({ length: 11 }, (_, index) => index / 10);
  return [
    line(pens.bar, [x, y + 5], [x + bar, y + 5]),
    ...shares.map((share) => line(pens.tick, [at(share, bar), y + 5], [at(share, bar), y + (share === 0 || share === 1 ? 0 : 3)])),
    area('panel', ring(x, y + 6, ruleLength + 3, 8)),
    outline(pens.tick, ring(x, y + 6, ruleLength + 3, 8)),
    ...shares.map((share) => line(pens.tick, [at(share, ruleLength), y + 6], [at(share, ruleLength), y + (share === 0 || share === 0.5 || share === 1 ? 9 : 7.8)])),
    figure(tell.mm(0), [x + 1.6, y + 11.4], 2.6),
    figure(tell.mm(100), [x + ruleLength - 2.5, y + 11.4], 2.6, 700),
  ];
}

const page = { width: 26, height: 24 } as const;
/** How far two pages lie over each other in the pictures, mm. */
const lap = 7;

/** Two sheets: cut along the grey line, laid over each other so that cross stands on cross. */
export function joinSheets(x: number, y: number): HowTo {
  const cut = x + page.width - lap / 2;
  return joined(
    { marks: [...onePage(x, y, 0, true), ...onePage(x + page.width + 4, y, lap, false)], glyphs: [] },
    { marks: arrow(x + 2 * page.width + 8, y + page.height / 2), glyphs: [] },
    { marks: laid(x + 68, y, 0), glyphs: [verdict('right', x + 68 + 2 * page.width - lap + 2, y + 8)] },
    { marks: laid(x + 130, y, 2.6), glyphs: [verdict('wrong', x + 130 + 2 * page.width - lap + 2, y + 8)] },
    { marks: scissors([cut, y - 2], 'down'), glyphs: [] },
  );
}

function onePage(x: number, y: number, crossFrom: number, trimmed: boolean): readonly Mark[] {
  const cross = crossFrom === 0 ? x + page.width - lap / 2 : x + crossFrom / 2;
  return [
    area('white', ring(x, y, page.width, page.height)),
    outline(pens.tick, ring(x, y, page.width, page.height)),
    line(pens.cut, [x, y + 15], [x + page.width, y + 15]),
    ...(trimmed ? [line({ ...pens.trim, width: 0.5 }, [cross, y], [cross, y + page.height])] : []),
    ...registerMark([cross, y + 7]),
  ];
}

/** The cut sheet over its neighbour, slipped down by some mm. */
function laid(x: number, y: number, slip: number): readonly Mark[] {
  const cut = page.width - lap / 2;
  const right = x + page.width - lap;
  return [
    ...onePage(right, y, lap, false),
    area('white', ring(x, y + slip, cut, page.height)),
    outline(pens.tick, ring(x, y + slip, cut, page.height)),
    line(pens.cut, [x, y + 15 + slip], [x + cut, y + 15 + slip]),
    ...(slip === 0 ? registerMark([x + cut, y + 7]) : halfCross(x + cut, y + 7 + slip)),
  ];
}

/** What is left of a register mark on the sheet that was cut through it. */
const halfCross = (x: number, y: number): readonly Mark[] =>
  clipMarks(registerMark([x, y]).filter(({ mark }) => mark !== 'circle'), boxWindow({ x: x - 9, y: y - 9, width: 9, height: 18 }));

const arrow = (x: number, y: number): readonly Mark[] => [line(pens.motion, [x - 1, y], [x + 3, y]), arrowhead([x + 6, y], [1, 0], 4)];

/** How a strip is laid on: round the panel's edge, along the tab's edge, up the post. About 26 × 11 mm. */
export function stripUse(kind: Strip['kind'], x: number, y: number): readonly Mark[] {
  const paper = { ...pens.bar, width: 0.7 };
  switch (kind) {
    case 'creases': return [
      area('panel', ring(x, y + 3.5, 22, 4)),
      line(pens.tick, [x, y + 3.5], [x + 22, y + 3.5], [x + 22, y + 7.5], [x, y + 7.5]),
      line(paper, [x + 6, y + 2.2], [x + 23.5, y + 2.2], [x + 23.5, y + 8.8], [x + 8, y + 8.8]),
    ];
    case 'pins': return [
      area('panel', ring(x, y, 26, 10)),
      line(pens.cut, [x, y + 10], [x + 2, y + 10], [x + 24, y + 10], [x + 26, y + 10]),
      area('white', ring(x + 2, y + 4.5, 22, 5.5)),
      outline(pens.tick, ring(x + 2, y + 4.5, 22, 5.5)),
      ...[5, 13, 21].flatMap((at) => [line(pens.tick, [x + at - 1, y + 7], [x + at + 1, y + 7]), line(pens.tick, [x + at, y + 6], [x + at, y + 8])]),
    ];
    case 'posts': return [
      line({ ...pens.motion, colour: 'faded' }, [x, y], [x, y + 10]),
      area('core', ring(x, y + 1.5, 26, 7)),
      outline(pens.tick, ring(x, y + 1.5, 26, 7)),
      area('white', ring(x, y + 3.5, 26, 3)),
      outline(pens.tick, ring(x, y + 3.5, 26, 3)),
      ...[6, 18].map((at) => line(pens.bar, [x + at, y + 1.5], [x + at, y + 8.5])),
    ];
  }
}

const joined = (...parts: readonly HowTo[]): HowTo => ({ marks: parts.flatMap(({ marks }) => marks), glyphs: parts.flatMap(({ glyphs }) => glyphs) });
