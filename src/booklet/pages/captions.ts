import type { PartKind } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { WORK } from '../../work/facts.ts';
import type { BookletInput } from './types.ts';

/** What is done in a step, as one short sentence of the locale's `actions`. */
export function caption({ words }: Pick<BookletInput, 'words'>, step: Step): string {
  const kinds = WORK[step.action].counts;
  return words.t(captionKey(step), {
    side: words.t(`actions.sides.${step.side ?? 'whole'}`),
    ...(kinds === undefined ? {} : { count: countOf(step, kinds) }),
  });
}

/** Some work is told by what it is done on. */
function captionKey({ action, detail }: Step): string {
  const behind = WORK[action].captionOf?.(detail);
  return behind === undefined ? `actions.${action}` : `actions.${action}.${behind}`;
}

function countOf({ newParts }: Step, kinds: readonly PartKind[]): number {
  return newParts.filter(({ kind }) => kinds.includes(kind)).reduce((sum, part) => sum + part.ids.length, 0);
}
