import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { itemAndSize } from './names.ts';
import { sheets } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import { Said, inSeveral, type Say } from './tongues.tsx';
import type { BookletInput } from './types.ts';

interface PageProps {
  readonly input: BookletInput;
  /** From 1. */
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A sheet of exact size: what the chapter puts on it, and at its foot number, item and size; on the cover nothing but the warning. */
export function Page({ input, number, total, children }: PageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[input.paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      {(number > 1 || input.despiteFindings) && <Foot input={input} number={number} total={total} />}
    </section>
  );
}

function Foot({ input, number, total }: Omit<PageProps, 'children'>): ReactNode {
  const { words, edition, despiteFindings = false } = input;
  const { outer, inner } = sheets[input.paper];
  const count = isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`);
  return (
    <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
      {number > 1 && <span className="folio"><Spoken text={count} /></span>}
      {despiteFindings && <Unproved input={input} />}
      {number > 1 && edition === 'words' && !(despiteFindings && inSeveral(input)) && <span><Said input={input} say={itemAndSize} how="inline" /></span>}
      {number > 1 && <span className="mark"><SizeMark input={input} height={4} /></span>}
    </footer>
  );
}

/** On every page of a booklet that is printed although a check failed. */
function Unproved({ input }: { readonly input: BookletInput }): ReactNode {
  const { glyphs, edition } = input;
  const say: Say = ({ words }) => words.t('booklet.despite-findings');
  return (
    <span className="unproved">
      <GlyphMark glyph={glyphs.plain('unproved')} label={say(input)} height={7.5} />
      {edition === 'words' && <b><Said input={input} say={say} how="inline" /></b>}
    </span>
  );
}
