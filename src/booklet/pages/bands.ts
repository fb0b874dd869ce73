import { findPicture, pictureId, piecesOf, type PictureOf } from '../../draw/index.ts';
import type { Step } from '../../plan/index.ts';
import { growth, mostScale, type Flexible } from './break-pages.ts';
import { caption } from './captions.ts';
import { headingHeight } from './chapter.tsx';
import { pageRoom } from './foot.tsx';
import { marginParts } from './margin-parts.ts';
import { narrowHead, type NarrowHead } from './narrow-head.ts';
import { pictureSize } from './placed-picture.tsx';
import { packPages, type Tall } from './pack.ts';
import { sizeLineCount } from './part-sizes.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { roundOf } from './round.ts';
import { captionSize, lineHeight, sheets } from './sheet.ts';
import { stripOf } from './strip.ts';
import { saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** White above and below what stands in a band, and between its rows, mm. */
export const bandPad = 3;
export const rowGap = 1.5;
/** Height of the numeral's row in the margin, and of a new part's count under its picture, mm. */
export const numeralHeight = 13;
export const countHeight = 9;
/** Height of the row that tells for how many identical decks a step is done, mm. */
export const timesHeight = 10;
/** Height of the row that tells which side is folded, mm. */
export const roundHeight = 14;
const runHeight = 24;
/** What is announced: size of its letters, pt, and the white beside its picture, mm. */
const announced = { size: 12, how: 'beside' } as const;
const announcedGap = 5;
/** Room of how often a run is done and the white beside it, where a narrow page has no margin for it, mm. */
const repeatWidth = 24;
/** Size of a run's picture against its own: it has no text, and its steps should begin on its page. */
export const runScale = 0.8;
/** Size of the finished item's picture after the last step against its own. */
export const finishedScale = 0.45;

/** A strip across the page between two hairlines. Heights in mm, white included; `flexible` is what its pictures take of it, `growing` those that may be set larger.
 * A step with more pictures than a page holds `goesOn` in the next band, which `comes` from it. `partsHeight` is that of the parts where they stand over the picture. */
export type Band = Omit<Flexible, 'leads'> & (
  | { readonly kind: 'step'; readonly headHeight: number; readonly partsHeight: number; readonly step: Step; readonly run: string | null; readonly pictures: readonly PictureOf[]; readonly goesOn: boolean; readonly comes: boolean }
  | { readonly kind: 'run'; readonly leads: true; readonly run: string; readonly times: number; readonly picture: PictureOf | null }
  | { readonly kind: 'finished'; readonly run: null }
);

/** How a band is fitted to its page: size of its pictures against their own, and white to be spread in it, mm. */
export interface Fit {
  readonly scale: number;
  readonly white: number;
}

/** A band's height on its page, mm. */
export function fittedHeight(band: Band, { scale }: Fit): number {
  return band.height - Math.max(0, 1 - scale) * band.flexible + growth(band, scale);
}

/** Size of one picture of a band against the size it has when nothing is fitted, which is `base` times its own. */
export function pictureScale(input: BookletInput, of: PictureOf, { scale }: Fit, base = 1): number {
  return Math.min(scale, mostOf(input, of, base));
}

/** How much larger a picture may be set: up to the column's width. */
function mostOf(input: BookletInput, of: PictureOf, base: number): number {
  return Math.min(mostScale, Math.max(1, sheets[input.paper].main / (pictureSize(input, of).width * base)));
}

/** What stands together in its order; and the same bands parted otherwise where a step's pictures take several pages. */
export interface Stretch {
  readonly bands: readonly Band[];
  readonly otherwise: readonly Band[] | null;
}

/** The bands of all steps in order: each step, before it the run that it starts; the finished item at the end. */
export function bandsOf(input: BookletInput): readonly Stretch[] {
  const stretches = input.plan.steps.map((step, index, steps): Stretch => {
    const before = steps[index - 1];
    const leading = runBand(input, step, before);
    const over = leading.reduce((sum, { height }) => sum + height, before ? 0 : headingHeight(input, 'steps'));
    const [bands, otherwise] = stepBands(input, step, over);
    return { bands: [...leading, ...bands], otherwise: otherwise === null ? null : [...leading, ...otherwise] };
  });
  return [...stretches, { bands: [finishedBand(input)], otherwise: null }];
}

/** The finished item as the last step leaves it. */
export const readyPicture = ({ pictures }: Pick<BookletInput, 'pictures'>): PictureOf =>
  (findPicture(pictures, { what: 'ready' }) === undefined ? { what: 'finished' } : { what: 'ready' });

function finishedBand(input: BookletInput): Band {
  const of = readyPicture(input);
  const height = pictureSize(input, of).height * finishedScale;
  return { kind: 'finished', run: null, height: height + 2 * bandPad, flexible: height, growing: [{ height, most: mostOf(input, of, finishedScale) }] };
}

function runBand(input: BookletInput, step: Step, before: Step | undefined): Band[] {
  if (step.run === null || step.run === before?.run) return [];
  const of: PictureOf = { what: 'run', run: step.run };
  const size = findPicture(input.pictures, of);
  const beside = (size ? size.width * runScale : 0) + (sheets[input.paper].narrow && step.times > 1 ? repeatWidth : 0);
  const told = announcedHeight(input, ({ words }) => words.t('booklet.run', { count: step.times }), beside);
  const least = Math.max(runHeight, told);
  const height = size ? Math.max(least, size.height * runScale + 2 * bandPad) : least;
  return [{ kind: 'run', height, flexible: height - least, leads: true, run: step.run, times: step.times, picture: size ? of : null }];
}

/** Height of a band that says something beside a picture of that width, white included, mm. */
function announcedHeight(input: BookletInput, say: Say, pictureWidth: number): number {
  if (input.edition === 'pictures') return 0;
  const width = sheets[input.paper].main - pictureWidth - announcedGap;
  return Math.ceil(2 * (saidHeight(input, say, width, announced) + 2 * bandPad)) / 2;
}

/** One band for a step, or as many as its pictures need, and the same with more on the last page where that can be; `over` is what stands above the first, mm. */
function stepBands(input: BookletInput, step: Step, over: number): readonly [readonly Band[], readonly Band[] | null] {
  const { leastScale } = sheets[input.paper];
  const shown = picturesOf(input, step);
  const [head, further] = [headOf(input, step, false), headOf(input, step, true)];
  const room = (taken: number): number => (pageRoom(input) - taken - stripOf(step, sheets[input.paper]).height - rowGap - 2 * bandPad - 0.5) / leastScale;
  // Where what is said in several languages leaves no room for a picture, the first page is left without one.
  // The white between pictures stays as wide when they are set smaller.
  const pages = packPages(shown.map((of) => ({ of, height: pictureSize(input, of).height + rowGap / leastScale })), room(further.parts), room(over + head.caption + head.parts));
  const bands = (parted: typeof pages): readonly Band[] => parted.map((page, index) => stepBand(input, step, page.map(({ of }) => of), index < parted.length - 1, index > 0));
  const [usual, alike] = [lastBalanced(pages, isLower), lastBalanced(pages, isMoreAlike)];
  return [bands(usual), alike.at(-1)?.length === usual.at(-1)?.length ? null : bands(alike)];
}

/** Whether the pages before the last and the last may be parted otherwise: heights before and after, mm. */
type MayMove = (was: readonly [before: number, last: number], becomes: readonly [before: number, last: number]) => boolean;
const isLower: MayMove = (_, [before, last]) => before >= last;
const isMoreAlike: MayMove = ([wasBefore, wasLast], [before, last]) => before > 0 && Math.abs(before - last) < wasBefore - wasLast;

/** Pictures on pages, of which the last is not left with little while the one before it is full: as many move on as may. */
function lastBalanced<Some extends Tall>(pages: readonly (readonly Some[])[], mayMove: MayMove): readonly (readonly Some[])[] {
  const [before, last] = [pages.at(-2), pages.at(-1)];
  const moved = before?.at(-1);
  if (before === undefined || last === undefined || moved === undefined) return pages;
  const [left, taken] = [before.slice(0, -1), [moved, ...last]];
  return mayMove([heightOf(before), heightOf(last)], [heightOf(left), heightOf(taken)]) ? lastBalanced([...pages.slice(0, -2), left, taken], mayMove) : pages;
}

const heightOf = (page: readonly Tall[]): number => page.reduce((sum, { height }) => sum + height, 0);

function stepBand(input: BookletInput, step: Step, shown: readonly PictureOf[], goesOn: boolean, comes: boolean): Band {
  const { narrow, leastScale } = sheets[input.paper];
  const flexible = shown.reduce((sum, of) => sum + pictureSize(input, of).height, 0);
  const { caption: headHeight, parts: partsHeight } = headOf(input, step, comes);
  const column = headHeight + partsHeight + (shown.length === 0 ? 0 : rowGap + flexible + rowGap * shown.length + stripOf(step, sheets[input.paper]).height);
  const margin = narrow ? 0 : numeralHeight + (comes ? 0 : newPartsHeight(input, step));
  const height = Math.ceil(2 * (Math.max(column, margin) + 2 * bandPad)) / 2;
  return {
    kind: 'step', height, flexible: Math.min(flexible, (height - 2 * bandPad - margin) / (1 - leastScale)),
    growing: shown.map((of) => ({ height: pictureSize(input, of).height, most: mostOf(input, of, 1) })),
    headHeight, partsHeight, step, run: step.run, pictures: shown, goesOn, comes,
  };
}

/** What stands over a step's pictures: its caption, on a narrow page its parts as well; where it comes from the page before, a narrow page's numeral. */
function headOf(input: BookletInput, step: Step, comes: boolean): NarrowHead {
  const { narrow, main } = sheets[input.paper];
  if (narrow) return comes ? { caption: 0, parts: numeralHeight } : narrowHead(input, step, numeralHeight);
  const isSaid = !comes && input.edition === 'words';
  return { caption: isSaid ? saidHeight(input, (each) => caption(each, step), main, { size: captionSize, how: 'beside' }) : 0, parts: 0 };
}

/** A step's pictures in order: its main one, which must be there, and further ones as far as there are any. */
export function picturesOf({ pictures }: Pick<BookletInput, 'pictures'>, { number }: Step): readonly PictureOf[] {
  const [, ...further] = piecesOf(pictures, { what: 'step', step: number });
  return [{ what: 'step', step: number, piece: 0 }, ...further.map(({ of }) => of)];
}

function newPartsHeight(input: BookletInput, step: Step): number {
  return (step.times > 1 ? timesHeight : 0) + (oneAtATime(input.plan, step) === null ? 0 : timesHeight) + (roundOf(input.plan, step) === null ? 0 : roundHeight) + marginParts(input, step).reduce((sum, { picture, counts }) =>
    sum + smallSize(input, picture).height + counts.reduce((lines, counted) => lines + countHeight + sizeLineCount(counted) * lineHeight, 0), 0);
}

/** Size of a part's small picture. Throws where it is wider than the margin column that holds it. */
export function smallSize(input: BookletInput, picture: PictureOf): { readonly width: number; readonly height: number } {
  const size = pictureSize(input, picture);
  const { margin, narrow } = sheets[input.paper];
  if (!narrow && size.width > margin) throw new Error(`booklet: picture "${pictureId(picture)}" is ${size.width} mm wide; the margin holds ${margin} mm`);
  return size;
}
