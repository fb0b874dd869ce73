import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { NumberedPage } from '../pages/numbered-page.tsx';
import { pageStyle } from '../pages/style.ts';
import type { BookletPages } from '../pages/index.ts';
import { panelPages } from './panel-page.tsx';
import { piecesPages } from './pieces.tsx';
import { cutPageStyle } from './style.ts';
import { summary } from './summary.tsx';
import { tubePages } from './tube-page.tsx';
import type { CutPagesInput } from './types.ts';

/** The parts of the document in their order; each gives the contents of its pages. */
const chapters: readonly ((input: CutPagesInput) => readonly ReactNode[])[] = [summary, piecesPages, tubePages, panelPages];

/** All pages of a cut plan: what to bring, the pieces by their letters, and a page for every different tube and panel. */
export function cutPages(input: CutPagesInput): BookletPages {
  const contents = chapters.flatMap((chapter) => chapter(input));
  const html = contents.map((content, index) => renderToStaticMarkup(
    <NumberedPage of={input} title={input.words.t('cutting.title')} number={index + 1} total={contents.length}>{content}</NumberedPage>,
  )).join('\n');
  return {
    html,
    css: `${pageStyle([input.words], input.paper)}\n${cutPageStyle}`,
    title: input.words.t('cutting.title'),
    dir: input.words.about.direction,
    pageCount: contents.length,
  };
}
