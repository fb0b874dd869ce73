import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { GlyphMark } from './glyph-mark.tsx';
import { itemAndSize, overall } from './names.ts';
import { lineScale, textWidth } from './setting.ts';
import { bandRoom, lineHeight, sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { Said, inEach, inSeveral, saidHeight, languagesOf, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** White under the foot, mm, and the size of its letters, pt. */
export const footWhite = 5;
const footSize = 10;
/** What stands beside the warning in the foot: its pictogram and the mark of the size, with white, and on a narrow page the page's number, mm. */
const besideWarning = { wide: 26, narrow: 46 } as const;

const warning: Say = ({ words }) => words.t('booklet.despite-findings');

interface FootProps {
  readonly input: BookletInput;
  /** From 1. */
  readonly number: number;
  readonly total: number;
}

/** At the foot of a page: its number, item and size, without words the measures over all; in a booklet that is printed although a check failed, the warning in the place of item and size. On the cover nothing but the warning. */
export function Foot({ input, number, total }: FootProps): ReactNode {
  const { words, edition, despiteFindings = false } = input;
  const { outer, inner } = sheets[input.paper];
  const count = isolate(`${words.number(number)}\u00a0/\u00a0${words.number(total)}`);
  return (
    <footer className="foot" style={{ insetInlineStart: `${outer}mm`, insetInlineEnd: `${inner}mm` }}>
      {number > 1 && <span className="folio"><Spoken text={count} /></span>}
      {despiteFindings && <Unproved input={input} />}
      {number > 1 && edition === 'words' && !crowded(input) && <span><Said input={fewer(input)} say={itemAndSize} how="inline" /></span>}
      {number > 1 && edition === 'pictures' && !despiteFindings && <span className="mark"><Spoken text={overall(input)} /></span>}
    </footer>
  );
}

function warningRoom({ paper }: BookletInput): number {
  const { main, narrow } = sheets[paper];
  return main - (narrow ? besideWarning.narrow : besideWarning.wide);
}

/** The booklet in as many of its languages as name item and size on one line. */
function fewer(input: BookletInput): BookletInput {
  const { alongside = [] } = input;
  const width = inEach(input).reduce((sum, each) => sum + textWidth(each.words, `${itemAndSize(each)} · `, { size: footSize }), 0);
  return alongside.length === 0 || width <= warningRoom(input) ? input : fewer({ ...input, alongside: alongside.slice(0, -1) });
}

/** Height that a page has for all but its foot, mm. */
export function pageRoom(input: BookletInput): number {
  return bandRoom(sheets[input.paper]) - footOver(input);
}

/** How much higher than one line the foot is, mm: a warning in several languages may take more. */
export function footOver(input: BookletInput): number {
  if (input.edition === 'pictures' || !input.despiteFindings) return 0;
  if (sheets[input.paper].narrow) return saidHeight(input, warning, warningRoom(input), { size: footSize, bold: true }) - lineHeight;
  const lines = Math.ceil(warningWidth(input) / warningRoom(input));
  return lines * lineHeight * Math.max(...languagesOf(input).map(lineScale)) - lineHeight;
}

/** Width of the warning on one line in all languages, mm; broken, each line may stay short by a word. */
function warningWidth(input: BookletInput): number {
  return inEach(input).reduce((sum, each) => sum + textWidth(each.words, `${warning(each)} · `, { size: footSize, bold: true }), 0) * (inSeveral(input) ? 1.15 : 1);
}

/** Whether item and size have no room beside the warning. */
function crowded(input: BookletInput): boolean {
  if (!input.despiteFindings) return false;
  return inSeveral(input) || warningWidth(input) + textWidth(input.words, itemAndSize(input), { size: footSize }) > warningRoom(input);
}

/** On every page of a booklet that is printed although a check failed. */
function Unproved({ input }: { readonly input: BookletInput }): ReactNode {
  const { glyphs, edition, paper } = input;
  return (
    <span className="unproved">
      <GlyphMark glyph={glyphs.plain('unproved')} label={warning(input)} height={7.5} />
      {edition === 'words' && <b><Said input={input} say={warning} how={sheets[paper].narrow ? 'under' : 'inline'} /></b>}
    </span>
  );
}
