import { Fragment, type ReactNode } from 'react';
import { dimensions, letteredWithin } from './dimensions.tsx';
import { partPages } from './parts-list.tsx';
import type { BookletInput } from './types.ts';

/** Without words: the parts, and under the last of them the lettered lengths where there is room, else on a page of their own. */
export function partsAndLengths(input: BookletInput): readonly ReactNode[] {
  const pages = partPages(input);
  const last = pages.at(-1);
  const scale = last === undefined ? null : letteredWithin(input, last.left);
  const nodes = pages.map(({ node }) => node);
  return scale === null ? [...nodes, ...dimensions(input)] : [...nodes.slice(0, -1), <Fragment key="lengths">{nodes.at(-1)}{dimensions(input, scale)}</Fragment>];
}
