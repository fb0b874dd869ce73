import type { Part, PartKind } from '../../model/index.ts';
import { PARTS } from '../../parts/facts.ts';
import type { Words } from '../words/index.ts';

/** What parts of one variety are called: by what they are, where the kit has several things of a kind. */
export const partName = (words: Words, kind: PartKind, [first]: readonly [Part, ...Part[]]): string => words.t(`parts.${PARTS[kind].named(first.shape) ?? kind}.name`);

/** The same with their number. */
export const partsCounted = (words: Words, kind: PartKind, parts: readonly [Part, ...Part[]]): string =>
  (PARTS[kind].named(parts[0].shape) === null ? words.t(`parts.${kind}.counted`, { count: parts.length }) : `${partName(words, kind, parts)} ${words.times(parts.length)}`);
