import { bendTurnsAt, chainSection, reachedAt, type Pattern, type PatternFlap, type Vec2 } from '../../../model/index.ts';
import type { DrawnPicture } from '../../types.ts';
import type { Mark } from '../../kit/marks.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import { groupMarks, type FoldFrame, type Hardware } from '../section-series.ts';
import { stepPaper } from '../step-paper.ts';

const margin = 1.5;
/** Panel shown inside the root line, mm. */
const insideShown = 30;
const waySteps = 10;

/**
 * Sections through one flap of any panel in the order of work: flat, then bend by bend, numbered from 1, with the bar that
 * it goes round where it will be. Throws a RangeError when the paper is too small.
 */
export function foldSeries(pattern: Pattern, flap: PatternFlap, hardware: Hardware, paper: Paper = stepPaper): DrawnPicture {
  return toPicture(paper, foldSeriesMarks(pattern, flap, hardware, paper));
}

/** The marks of the picture, for the tests. */
export function foldSeriesMarks(pattern: Pattern, flap: PatternFlap, hardware: Hardware, paper: Paper): readonly Mark[] {
  const box = { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - 2 * margin };
  return groupMarks({ axis: barAxis(pattern, flap), thickness: pattern.thickness }, hardware, bendFrames(pattern, flap), 1, box);
}

/** Flat, and every bend of the flap. */
export function bendFrames(pattern: Pattern, flap: PatternFlap): readonly FoldFrame[] {
  const moves = flap.order.length;
  const turns = (stage: number) => bendTurnsAt(flap.bends, flap.order, stage);
  const tip = (stage: number): Vec2 => reachedAt(pattern, flap.bends, turns(stage), flap.edge).at;
  return Array.from({ length: moves + 1 }, (_, move): FoldFrame => ({
    outline: chainSection(pattern, flap.bends, turns(move / moves), -insideShown, flap.edge),
    way: move === 0 ? [] : Array.from({ length: waySteps + 1 }, (_each, step) => tip((move - 1 + step / waySteps) / moves)),
    pin: null,
  }));
}

/** The middle of the bar: where the normals of two facets round it meet, those after the first and before the last crease of its wrap. */
export function barAxis(pattern: Pattern, { bends, order, wall }: PatternFlap): Vec2 {
  const round = bends.slice(wall).filter(({ is }) => is === 'crease');
  const [first, second] = round;
  const [last, before] = [round.at(-1), round.at(-2)];
  if (first === undefined || second === undefined || last === undefined || before === undefined || round.length < 3) throw new RangeError('a flap that goes round a bar has three creases or more');
  const done = bendTurnsAt(bends, order, 1);
  const [one, other] = [(first.at + second.at) / 2, (before.at + last.at) / 2].map((at) => reachedAt(pattern, bends, done, at));
  if (one === undefined || other === undefined) throw new RangeError('no two facets');
  const [nx, ny] = [-Math.sin(one.heading), Math.cos(one.heading)];
  const [mx, my] = [-Math.sin(other.heading), Math.cos(other.heading)];
  const [dx, dy] = [other.at[0] - one.at[0], other.at[1] - one.at[1]];
  const along = (dx * my - dy * mx) / (nx * my - ny * mx);
  return [one.at[0] + nx * along, one.at[1] + ny * along];
}
