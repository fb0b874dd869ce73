import type { Step } from '../../plan/index.ts';
import type { Words } from '../words/index.ts';
import { caption } from './captions.ts';
import { suppliesSaid } from './margin-parts.ts';
import type { BookletInput } from './types.ts';

/** A step's picture in words: number, action, new parts with their counts, repetitions, people, tools. */
export function stepAlt(input: Pick<BookletInput, 'words' | 'model'>, step: Step): string {
  const { words } = input;
  return [
    words.t('booklet.alt.step', { number: step.number, caption: caption(input, step) }),
    ...newPartsAlt(words, step),
    ...(step.times > 1 ? [words.t('booklet.alt.times', { count: step.times })] : []),
  ].join(' ');
}

function newPartsAlt(words: Words, { newParts, supplies }: Step): readonly string[] {
  if (newParts.length + supplies.length === 0) return [];
  const parts = [
    ...newParts.map(({ kind, ids }) => words.t(`parts.${kind}.counted`, { count: ids.length })),
    ...supplies.map(({ name, count }) => suppliesSaid(words, name, count)),
  ];
  return [words.t('booklet.alt.new-parts', { parts: words.list(parts) })];
}
