import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { before } from './before.tsx';
import { colophon } from './colophon.tsx';
import { cover } from './cover.tsx';
import { cutLengths } from './cut-lengths.tsx';
import { dimensions } from './dimensions.tsx';
import { lastChecks } from './last-checks.tsx';
import { itemAndSize } from './names.ts';
import { Page } from './page.tsx';
import { partsList } from './parts-list.tsx';
import { pattern } from './pattern.tsx';
import { plates } from './plates.tsx';
import { safeLoad } from './safe-load.tsx';
import { steps } from './steps.tsx';
import { pageStyle } from './style.ts';
import type { BookletInput, BookletPages } from './types.ts';

/** The chapters in the order of the booklet; each gives the contents of its pages. */
const chapters: readonly ((input: BookletInput) => readonly ReactNode[])[] = [
  cover, before, partsList, dimensions, cutLengths, pattern, plates, steps, lastChecks, safeLoad, colophon,
];

/**
 * All pages of one booklet: one language, edition and paper of one size variant.
 * Throws where a picture, a word or a pictogram is missing, or something is higher than a page.
 */
export function bookletPages(input: BookletInput): BookletPages {
  const contents = chapters.flatMap((chapter) => chapter(input));
  const html = contents.map((content, index) => renderToStaticMarkup(
    <Page input={input} number={index + 1} total={contents.length}>{content}</Page>,
  )).join('\n');
  return {
    html,
    css: pageStyle(input.words.about.textScale, input.paper),
    title: itemAndSize(input),
    dir: input.words.about.direction,
    pageCount: contents.length,
  };
}
