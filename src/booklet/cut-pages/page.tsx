import type { ReactNode } from 'react';
import { sheets } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import type { CutPagesInput } from './types.ts';

interface CutPageProps {
  readonly input: CutPagesInput;
  /** From 1. */
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A sheet of exact size with its number, the plan's title and its mark at the foot. */
export function CutPage({ input: { paper, words, contentMark }, number, total, children }: CutPageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
        <span className="folio"><Spoken text={isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`)} /></span>
        <span>{words.t('cutting.title')}</span>
        <span className="mark"><Spoken text={isolate(contentMark)} /></span>
      </footer>
    </section>
  );
}
