import type { ReactNode } from 'react';
import type { Paper } from '../print/index.ts';
import { isolate, type Words } from '../words/index.ts';
import { sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';

interface NumberedPageProps {
  readonly of: { readonly words: Words; readonly paper: Paper; readonly contentMark: string };
  /** What stands in the middle of the foot. */
  readonly title: string;
  /** From 1. */
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A page of exact size that is no booklet's: at its foot its number of all, a title and the mark of the content. */
export function NumberedPage({ of: { words, paper, contentMark }, title, number, total, children }: NumberedPageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
        <span className="folio"><Spoken text={isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`)} /></span>
        <span>{title}</span>
        <span className="print"><Spoken text={isolate(contentMark)} /></span>
      </footer>
    </section>
  );
}
