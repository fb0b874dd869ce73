import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { atTheEnd } from './at-the-end.tsx';
import { before } from './before.tsx';
import { colophon } from './colophon.tsx';
import { cover } from './cover.tsx';
import { cutLengths } from './cut-lengths.tsx';
import { dimensions } from './dimensions.tsx';
import { itemAndSize } from './names.ts';
import { Page } from './page.tsx';
import { partsAndLengths } from './parts-and-lengths.tsx';
import { partsList } from './parts-list.tsx';
import { pattern } from './pattern.tsx';
import { plates } from './plates.tsx';
import { steps } from './steps.tsx';
import { pageStyle } from './style.ts';
import { inEach, languagesOf } from './in-languages.tsx';
import type { BookletInput, BookletPages } from './types.ts';

type Chapter = (input: BookletInput) => readonly ReactNode[];

/** The chapters in the order of the booklet; each gives the contents of its pages. Without words nothing is shown twice: what is cut and folded stands at its step alone. */
const chapters: Readonly<Record<BookletInput['edition'], readonly Chapter[]>> = {
  pictures: [cover, before, partsAndLengths, steps, atTheEnd, colophon],
  words: [cover, before, partsList, (input) => dimensions(input), cutLengths, pattern, plates, steps, atTheEnd, colophon],
};

/**
 * All pages of one booklet: one edition and paper of one size variant, in one language or several side by side.
 * Throws where a picture, a word or a pictogram is missing, or something is higher than a page.
 */
export function bookletPages(input: BookletInput): BookletPages {
  const contents = chapters[input.edition].flatMap((chapter) => chapter(input));
  const html = contents.map((content, index) => renderToStaticMarkup(
    <Page input={input} number={index + 1} total={contents.length}>{content}</Page>,
  )).join('\n');
  return {
    html,
    css: pageStyle(languagesOf(input), input.paper),
    title: inEach(input).map(itemAndSize).join(' · '),
    dir: input.words.about.direction,
    pageCount: contents.length,
  };
}
