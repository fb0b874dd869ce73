import type { PartKind } from '../../model/index.ts';
import type { Standing, Step } from '../../plan/index.ts';
import { leastScale } from './break-pages.ts';
import { caption } from './captions.ts';
import { pictureSize } from './placed-picture.tsx';
import { glyphHeight, lineHeight, linesOf, sheets, captionSize } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** White above and below what stands in a band, and between its rows, mm. */
export const bandPad = 3;
export const rowGap = 1.5;
/** Height of the numeral's row in the margin, and of a new part's count under its picture, mm. */
export const numeralHeight = 13;
export const countHeight = 9;
/** Height of the row that tells for how many identical decks a step is done, mm. */
export const timesHeight = 10;
/** A band that only announces a turn, mm. */
const turnHeight = 20;
const runHeight = 24;
/** Size of a run's picture against its own: it has no text, and its steps should begin on its page. */
export const runScale = 0.8;

/** A strip across the page between two hairlines. Heights in mm, white included; `flexible` is what its pictures take of it. */
export type Band = { readonly height: number; readonly flexible: number } & (
  | { readonly kind: 'step'; readonly headHeight: number; readonly step: Step; readonly run: string | null; readonly pictures: readonly string[] }
  | { readonly kind: 'run'; readonly leads: true; readonly run: string; readonly times: number; readonly picture: string | null }
  | { readonly kind: 'turn'; readonly leads: true; readonly run: string | null }
);

/** How a band is fitted to its page: size of its pictures against their own, and white to be spread in it, mm. */
export interface Fit {
  readonly scale: number;
  readonly white: number;
}

/** The bands of all steps in order: each step, before it what it starts: a run, another standing. */
export function bandsOf(input: BookletInput): readonly Band[] {
  return input.plan.steps.flatMap((step, index, steps) => {
    const before = steps[index - 1];
    return [...runBand(input, step, before), ...turnBand(step, before), stepBand(input, step)];
  });
}

function runBand(input: BookletInput, step: Step, before: Step | undefined): Band[] {
  if (step.run === null || step.run === before?.run) return [];
  const id = `run:${step.run}`;
  const size = input.pictures[id];
  const height = size ? Math.max(runHeight, size.height * runScale + 2 * bandPad) : runHeight;
  return [{ kind: 'run', height, flexible: height - runHeight, leads: true, run: step.run, times: step.times, picture: size ? id : null }];
}

/** Turning the work is a step of its own; only a walk round the upright work, to another side of it, is announced. */
function turnBand({ standing, run }: Step, before: Step | undefined): Band[] {
  const sameView = before === undefined || samePose(standing.pose, before.standing.pose);
  return standing.name !== 'upright' || sameView ? [] : [{ kind: 'turn', height: turnHeight, flexible: 0, leads: true, run }];
}

const samePose = (one: Standing['pose'], other: Standing['pose']): boolean =>
  one.every((value, index) => Math.abs(value - (other[index] ?? NaN)) < 1e-9);

function stepBand(input: BookletInput, step: Step): Band {
  const ids = picturesOf(input, step);
  const flexible = ids.reduce((sum, id) => sum + pictureSize(input, id).height, 0);
  const headHeight = input.edition === 'words' ? linesOf(caption(input, step), sheets[input.paper].main, captionSize * input.words.about.textScale) * lineHeight : 0;
  const column = headHeight + rowGap + flexible + rowGap * ids.length + glyphHeight;
  const margin = numeralHeight + newPartsHeight(input, step);
  const height = Math.ceil(2 * (Math.max(column, margin) + 2 * bandPad)) / 2;
  return { kind: 'step', height, flexible: Math.min(flexible, (height - 2 * bandPad - margin) / (1 - leastScale)), headHeight, step, run: step.run, pictures: ids };
}

/** `step:7`, then `step:7:a`, `step:7:b` and so on as far as there are any. */
function picturesOf({ pictures }: BookletInput, { number }: Step): readonly string[] {
  const more = Object.keys(pictures).filter((id) => id.startsWith(`step:${number}:`)).sort();
  return [`step:${number}`, ...more];
}

function newPartsHeight(input: BookletInput, { newParts, times }: Step): number {
  return (times > 1 ? timesHeight : 0) + newParts.reduce((sum, { kind, ids }) =>
    sum + smallSize(input, kind).height + countHeight + (toldLength(input.model, ids[0] ?? '') === null ? 0 : lineHeight), 0);
}

/** Length of a new tube or cable, mm; null for parts that come in one size. */
export function toldLength(model: BookletInput['model'], id: string): number | null {
  const shape = model.parts.find((part) => part.id === id)?.shape;
  return shape?.form === 'tube' || shape?.form === 'cable' ? shape.length : null;
}

/** Size of a part's small picture. Throws where it is wider than the margin column that holds it. */
export function smallSize(input: BookletInput, kind: PartKind): { readonly width: number; readonly height: number } {
  const size = pictureSize(input, `small:${kind}`);
  const { margin } = sheets[input.paper];
  if (size.width > margin) throw new Error(`booklet: picture "small:${kind}" is ${size.width} mm wide; the margin holds ${margin} mm`);
  return size;
}
