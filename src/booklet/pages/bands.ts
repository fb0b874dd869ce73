import { findPicture, pictureId, piecesOf, type PictureOf } from '../../draw/index.ts';
import { varietyOf } from '../../parts/varieties.ts';
import type { Step } from '../../plan/index.ts';
import { growth, mostScale, type Flexible, type Parting } from './break-pages.ts';
import { caption } from './captions.ts';
import { headingHeight } from './chapter.tsx';
import { pageRoom } from './foot.tsx';
import { marginParts } from './margin-parts.ts';
import { narrowHead, type NarrowHead } from './narrow-head.ts';
import { pictureSize } from './placed-picture.tsx';
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
const runScale = 0.8;
/** Most height of what is made, mm. */
const mostRun = 30.4;
/** Size of the finished item's picture after the last step against its own. */
export const finishedScale = 0.45;

/** A strip across the page between two hairlines. Heights in mm, white included; `flexible` is what its pictures take of it, `growing` those that may be set larger.
 * A step with more pictures than a page holds `goesOn` in the next band, which `comes` from it. `partsHeight` is that of the parts where they stand over the picture. */
export type Band = Omit<Flexible, 'leads'> & (
  | { readonly kind: 'step'; readonly headHeight: number; readonly partsHeight: number; readonly step: Step; readonly run: string | null; readonly pictures: readonly PictureOf[]; readonly goesOn: boolean; readonly comes: boolean }
  | { readonly kind: 'run'; readonly leads: true; readonly run: string; readonly times: number; readonly picture: { readonly of: PictureOf; readonly scale: number } | null }
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

/** The bands of all steps in order: each step, before it the run that it starts; the finished item at the end. */
export function bandsOf(input: BookletInput): readonly Band[] {
  const bands = input.plan.steps.flatMap((step, index, steps): readonly Band[] => [...runBand(input, step, steps[index - 1]), stepBand(input, step, picturesOf(input, step), false, false)]);
  return [...bands, finishedBand(input)];
}

/** A step goes on over the page between its pictures; before the first where what stands over it leaves that no room. */
export function partingOf(input: BookletInput): Parting<Band> {
  const made = new Map<string, Band>();
  const isHeadAlone = new Map(input.plan.steps.map((step, index, steps) => [step.number, hasHeadAlone(input, step, steps[index - 1])]));
  return {
    pieces: (band) => (band.kind === 'step' ? band.pictures.length + (isHeadAlone.get(band.step.number) === true ? 1 : 0) : 1),
    part: (band, from, to) => {
      if (band.kind !== 'step') return band;
      const key = `${band.step.number}:${from}:${to}`;
      const over = isHeadAlone.get(band.step.number) === true ? 1 : 0;
      const part = made.get(key) ?? stepBand(input, band.step, band.pictures.slice(Math.max(0, from - over), to - over), to - over < band.pictures.length, from > 0);
      made.set(key, part);
      return part;
    },
  };
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
  const of = madeFirst(input, step) ?? { what: 'run', run: step.run };
  const size = findPicture(input.pictures, of);
  const scale = size ? Math.min(runScale, mostRun / size.height) : runScale;
  const beside = (size ? size.width * scale : 0) + (sheets[input.paper].narrow && step.times > 1 ? repeatWidth : 0);
  const told = announcedHeight(input, ({ words }) => words.t('booklet.run', { count: step.times }), beside);
  const least = Math.max(runHeight, told);
  const height = size ? Math.max(least, size.height * scale + 2 * bandPad) : least;
  return [{ kind: 'run', height, flexible: height - least, leads: true, run: step.run, times: step.times, picture: size ? { of, scale } : null }];
}

/** Of a run that begins with a panel flat on the bench: that panel, for its frame comes later. */
function madeFirst({ model, pictures }: BookletInput, { standing, detail }: Step): PictureOf | null {
  if (standing.name !== 'bench' || detail.on !== 'pattern') return null;
  const of: PictureOf = { what: 'part', kind: 'panel', variety: varietyOf(model, 'panel', model.patterns[detail.index]?.partIds ?? []) };
  return findPicture(pictures, of) === undefined ? null : of;
}

/** Height of a band that says something beside a picture of that width, white included, mm. */
function announcedHeight(input: BookletInput, say: Say, pictureWidth: number): number {
  if (input.edition === 'pictures') return 0;
  const width = sheets[input.paper].main - pictureWidth - announcedGap;
  return Math.ceil(2 * (saidHeight(input, say, width, announced) + 2 * bandPad)) / 2;
}

/** Whether what is said over a step, in several languages, leaves no room on its page for its first picture. */
function hasHeadAlone(input: BookletInput, step: Step, before: Step | undefined): boolean {
  const over = runBand(input, step, before).reduce((sum, { height }) => sum + height, before ? 0 : headingHeight(input, 'steps'));
  const { height, flexible } = stepBand(input, step, picturesOf(input, step).slice(0, 1), true, false);
  return over + height - (1 - sheets[input.paper].leastScale) * flexible > pageRoom(input);
}

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
