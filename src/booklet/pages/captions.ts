import type { PartKind } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { WORK } from '../../work/facts.ts';
import type { BookletInput } from './types.ts';

/** What is done in a step, as one short sentence of the locale's `actions`. */
export function caption({ words }: Pick<BookletInput, 'words'>, step: Step): string {
  const kind = WORK[step.action].counts;
  return words.t(captionKey(step), {
    ...(step.side === null ? {} : { side: words.t(`actions.sides.${step.side}`) }),
    ...(kind === undefined ? {} : { count: countOf(step, kind) }),
  });
}

/** Some work is told by what it is done on. */
function captionKey({ action, detail }: Step): string {
  const behind = WORK[action].captionOf?.(detail);
  return behind === undefined ? `actions.${action}` : `actions.${action}.${behind}`;
}

function countOf({ newParts }: Step, kind: PartKind): number {
  return newParts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.ids.length, 0);
}
