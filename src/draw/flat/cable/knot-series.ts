import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import type { CableCut } from './cut-picture.ts';
import { drawnTight, hitchesTight, hitchLoose, roundStud } from './hitches.ts';
import { hungMass } from './hung-mass.ts';
import { knottedLoose, laidBack, loopTight, placed, secondLoose, secondTight, type Frame } from './knots.ts';

/** Heights of the rows, mm of paper. */
const ROWS = [31, 31, 54] as const;
/** How much wider the frame is in which the cord is looked at. */
const WIDER = 1.5;

/** Three rows: the loop at the end, the second loop at its place, and the end made fast at the stud; each knot laid loose, then drawn tight. Last how tight is looked at. */
export function knotSeries(cable: CableCut, { width }: Paper): DrawnPicture {
  const paper = { width, height: ROWS.reduce((sum, high) => sum + high, 0) };
  return toPicture(paper, knotMarks(cable, paper));
}

/** The marks of the picture, for the tests. */
export function knotMarks(cable: CableCut, { width }: Paper): readonly Mark[] {
  const rows: readonly (readonly Frame[])[] = [
    [laidBack(cable.doubled), knottedLoose, loopTight],
    [placed(cable.between), secondLoose, secondTight],
    [roundStud, drawnTight, hitchLoose, hitchesTight, hungMass(cable.test)],
  ];
  return rows.flatMap((frames, row) => {
    const [top, high] = [ROWS.slice(0, row).reduce((sum, each) => sum + each, 0), ROWS[row] ?? 0];
    const isLast = row === rows.length - 1;
    const wide = width / (frames.length + (isLast ? WIDER - 1 : 0));
    const before = rows.slice(0, row).reduce((sum, each) => sum + each.length, 0);
    return frames.flatMap((frame, place): readonly Mark[] => {
      const corner: Vec2 = [place * wide, top];
      return [ringedNumeral(tell.number(before + place + 1), [corner[0] + 5, corner[1] + 6], capHeights.order, pens.edge), ...frame([corner[0] + (isLast && place === frames.length - 1 ? WIDER : 1) * (wide / 2) + 1, corner[1] + high / 2])];
    });
  });
}
