import type { ReactNode } from 'react';
import type { WorkerCheck } from '../../plan/index.ts';
import { CheckPictures, checkWidth } from '../pages/check-pictures.tsx';
import { lineHeight, sheets } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { ranges } from './names.ts';
import { chapterPages, textHeight, textRow, type Row } from './row.tsx';
import { linesIn } from './text-height.ts';
import type { PackInput, PackItem } from './types.ts';

const pictureHeight = 20;
const white = 8;
/** Between the pictures and the words, mm; size of the words that tell where, pt. */
const columnGap = 8;
const whereSize = 10;

/** Each thing that goes wrong once, as a right and a wrong picture, with the steps of every item where it matters. */
export function mistakes(input: PackInput): readonly ReactNode[] {
  const checks = new Map(input.items.flatMap((item) => checksOf(item).map((check) => [check.name, check] as const)));
  return chapterPages(input, 'mistakes', [
    textRow(input, input.words.t('pack.mistakes')),
    ...[...checks.values()].map((check) => mistakeRow(input, check)),
  ]);
}

/** Every check of an item once, in the order of its first step. */
export function checksOf({ plan }: PackItem): readonly WorkerCheck[] {
  return [...new Map(plan.steps.flatMap(({ check }) => (check === null ? [] : [[check.name, check] as const]))).values()];
}

function mistakeRow(input: PackInput, check: WorkerCheck): Row {
  const { words, items } = input;
  const where = items.flatMap(({ model, plan }) => {
    const steps = plan.steps.filter((step) => step.check?.name === check.name).map(({ number }) => number);
    return steps.length === 0 ? [] : [`${words.t(`items.${model.item}.name`)} ${ranges(words, steps)}`];
  });
  const says = words.t(`checks.${check.name}`);
  const told = where.join(' · ');
  const width = sheets.a4.main - checkWidth(check.kind, pictureHeight) - columnGap;
  const text = textHeight(input, says, width, 0) + linesIn(words, words.lang, told, width, whereSize) * lineHeight;
  return {
    height: Math.max(pictureHeight, text) + white,
    node: (
      <div className="mistake main" style={{ gap: `${columnGap}mm` }}>
        <div className="pair"><CheckPictures input={input} check={check} height={pictureHeight} /></div>
        <div><p>{says}</p><p className="where"><Spoken text={told} /></p></div>
      </div>
    ),
  };
}
