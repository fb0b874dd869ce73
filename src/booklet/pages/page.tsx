import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { itemAndSize } from './names.ts';
import { sheets } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

interface PageProps {
  readonly input: BookletInput;
  /** From 1. */
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A sheet of exact size: what the chapter puts on it, and at its foot number, item and size. */
export function Page({ input, number, total, children }: PageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[input.paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      {number > 1 && <Foot input={input} number={number} total={total} />}
    </section>
  );
}

function Foot({ input, number, total }: Omit<PageProps, 'children'>): ReactNode {
  const { words, edition } = input;
  const { outer, inner } = sheets[input.paper];
  const count = isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`);
  return (
    <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
      <span className="folio"><Spoken text={count} /></span>
      {edition === 'words' && <span>{itemAndSize(input)}</span>}
      <span className="mark"><SizeMark input={input} height={4} /></span>
    </footer>
  );
}
