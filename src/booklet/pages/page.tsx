import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { itemAndSize } from './names.ts';
import { sheets } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import { textWidth } from './setting.ts';
import { Said, inEach, type Say } from './tongues.tsx';
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

/** Foot of a page: letters, pt, the white between what stands in it, the number, a sign with the white beside it, and the size's mark, mm. */
const footSize = 10;
const footGap = 4;
const folioWidth = 16;
const signWidth = 13;
const markWidth = 8;

function Foot({ input, number, total }: Omit<PageProps, 'children'>): ReactNode {
  const { words, despiteFindings = false } = input;
  const { outer, inner, main, narrow } = sheets[input.paper];
  const count = isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`);
  const room = main - markWidth - footGap - (narrow && number > 1 ? folioWidth + footGap : 0);
  const warned = despiteFindings ? inSpace(input, unproved, room - signWidth, true) : null;
  const taken = warned === null ? 0 : signWidth + footGap + footWidth(warned, unproved, true);
  const named = inSpace(input, itemAndSize, room - taken, false);
  return (
    <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
      {number > 1 && <span className="folio"><Spoken text={count} /></span>}
      {despiteFindings && <Unproved input={input} said={warned} />}
      {number > 1 && named && <span><Said input={named} say={itemAndSize} how="inline" /></span>}
      {number > 1 && <span className="mark"><SizeMark input={input} height={4} /></span>}
    </footer>
  );
}

const unproved: Say = ({ words }) => words.t('booklet.despite-findings');

/** The booklet in as many of its languages as say this in `room` mm of one line; null where not even the first does, and without words. */
function inSpace(input: BookletInput, say: Say, room: number, bold: boolean): BookletInput | null {
  if (input.edition === 'pictures') return null;
  const { alongside = [] } = input;
  const fewer = Array.from({ length: alongside.length + 1 }, (_, left) => ({ ...input, alongside: alongside.slice(0, alongside.length - left) }));
  return fewer.find((each) => footWidth(each, say, bold) <= room) ?? null;
}

function footWidth(input: BookletInput, say: Say, bold: boolean): number {
  return inEach(input).reduce((sum, each) => sum + textWidth(each.words, say(each), { size: footSize, bold }) + footGap, -footGap);
}

/** On every page of a booklet that is printed although a check failed; the sign alone where the words do not fit. */
function Unproved({ input, said }: { readonly input: BookletInput; readonly said: BookletInput | null }): ReactNode {
  return (
    <span className="unproved">
      <GlyphMark glyph={input.glyphs.plain('unproved')} label={unproved(input)} height={7.5} />
      {said && <b><Said input={said} say={unproved} how="inline" /></b>}
    </span>
  );
}
