import { captionSize, sheets } from './sheet.ts';
import { caption } from './captions.ts';
import { marginParts, type MarginPart } from './margin-parts.ts';
import { packRows } from './pack.ts';
import { pictureSize } from './placed-picture.tsx';
import { sizeLineCount } from './part-sizes.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { roundOf } from './round.ts';
import { saidHeight } from './in-languages.tsx';
import type { Step } from '../../plan/index.ts';
import type { BookletInput } from './types.ts';

/** Beside a step's numeral on a narrow page: room of the numeral, between the parts, and between a part and its count, mm. */
export const numeralRoom = 19;
export const partsGap = 4;
export const countGap = 1.5;

/** Room of a repetition with its pictogram, of a count in bold figures, and of a size with its unit, by the lines that it would take in a margin, mm. */
export const timesWidth = 24;
const countWidth = 14;
const sizeWidths = [0, 21, 30] as const;
/** Height of a row of parts at the least, mm. */
const leastRow = 10;

/** Height of a narrow page's head of a step: the caption's lines, and under it the rows of its parts, mm. */
export interface NarrowHead {
  readonly caption: number;
  readonly parts: number;
}

/** What stands beside the numeral of a step; the head is never lower than the numeral, `least` mm. */
export function narrowHead(input: BookletInput, step: Step, least: number): NarrowHead {
  const room = sheets[input.paper].main - numeralRoom;
  const said = input.edition === 'words' ? saidHeight(input, (each) => caption(each, step), room, { size: captionSize, how: 'beside' }) : 0;
  const parts = rowsOf(input, step, room).reduce((sum, height) => sum + height, 0);
  return { caption: said, parts: Math.max(parts, least - said) };
}

/** Heights of the rows of a step's repetition and parts. */
function rowsOf(input: BookletInput, step: Step, room: number): readonly number[] {
  const parts = marginParts(input, step).map((part) => ({ width: narrowPartWidth(input, part), height: pictureSize(input, part.picture).height }));
  const times = [...(step.times > 1 ? [{ width: timesWidth, height: 0 }] : []), ...(oneAtATime(input.plan, step) === null ? [] : [{ width: timesWidth, height: 0 }])];
  const round = roundOf(input.plan, step) === null ? [] : [{ width: timesWidth, height: 0 }];
  return packRows([...round, ...times, ...parts], room, partsGap).map((row) => Math.max(leastRow, ...row.map(({ height }) => height)));
}

/** Width of a part's small picture with its counts beside it, mm. */
export function narrowPartWidth(input: BookletInput, { picture, counts }: MarginPart): number {
  const told = counts.reduce((sum, counted) => sum + countGap + countWidth + (sizeWidths[sizeLineCount(counted)] ?? 0), 0);
  return pictureSize(input, picture).width + told;
}
