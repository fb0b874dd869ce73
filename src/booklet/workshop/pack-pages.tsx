import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { BookletPages } from '../pages/index.ts';
import { NumberedPage } from '../pages/numbered-page.tsx';
import { pageStyle } from '../pages/style.ts';
import { before } from './before.tsx';
import { bring } from './bring.tsx';
import { cautions } from './cautions.tsx';
import { cover } from './cover.tsx';
import { mistakes } from './mistakes.tsx';
import { notesPages } from './notes-pages.tsx';
import { signPages } from './sign.tsx';
import { workshopStyle } from './style.ts';
import { timetable } from './timetable.tsx';
import type { PackInput } from './types.ts';

/** The chapters in the order of the pack; each gives the contents of its pages. */
const chapters: readonly ((input: PackInput) => readonly ReactNode[])[] = [cover, cautions, bring, before, timetable, notesPages, mistakes, signPages];

/** All pages of a workshop pack. Throws where a word, a picture or a pictogram is missing, or something is higher than a page. */
export function packDocumentPages(input: PackInput): BookletPages {
  const { words } = input;
  const contents = chapters.flatMap((chapter) => chapter(input));
  return {
    html: contents.map((content, index) => renderToStaticMarkup(<NumberedPage of={input} title={words.t('pack.title')} number={index + 1} total={contents.length}>{content}</NumberedPage>)).join('\n'),
    css: `${pageStyle([words], input.paper)}\n${workshopStyle}`,
    title: words.t('pack.title'),
    dir: words.about.direction,
    pageCount: contents.length,
  };
}
