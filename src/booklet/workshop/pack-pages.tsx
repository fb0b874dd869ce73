import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { BookletPages } from '../pages/index.ts';
import { sheets } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { pageStyle } from '../pages/style.ts';
import { isolate } from '../words/index.ts';
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
    html: contents.map((content, index) => renderToStaticMarkup(<PackPage input={input} number={index + 1} total={contents.length}>{content}</PackPage>)).join('\n'),
    css: `${pageStyle([words], input.paper)}\n${workshopStyle}`,
    title: words.t('pack.title'),
    dir: words.about.direction,
    pageCount: contents.length,
  };
}

interface PackPageProps {
  readonly input: PackInput;
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A sheet of exact size with its number and the content mark at its foot. */
function PackPage({ input: { words, paper, contentMark }, number, total, children }: PackPageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
        <span className="folio"><Spoken text={isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`)} /></span>
        <span>{words.t('pack.title')}</span>
        <span className="print"><Spoken text={isolate(contentMark)} /></span>
      </footer>
    </section>
  );
}
