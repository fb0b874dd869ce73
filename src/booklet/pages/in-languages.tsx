import { Fragment, type ReactNode } from 'react';
import type { Words } from '../words/index.ts';
import { lineScale, textLines, type Setting } from './setting.ts';
import { lineHeight, sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** How a text's languages stand to one another: each under the last, in columns side by side, or in one line. A narrow page has no room for columns. */
export type Standing = 'under' | 'beside' | 'inline';

/** What is said, asked of the booklet once in each of its languages. */
export type Say = (input: BookletInput) => string;

/** White between columns of languages, mm. */
export const columnGap = 5;

/** The booklet's languages: the first gives the pages their direction and the pictures their words. */
export function languagesOf({ words, alongside = [] }: Pick<BookletInput, 'words' | 'alongside'>): readonly Words[] {
  return [words, ...alongside];
}

/** Whether texts stand in more than one language. */
export function inSeveral(input: Pick<BookletInput, 'words' | 'alongside'>): boolean {
  return languagesOf(input).length > 1;
}

/** How they stand on the booklet's paper where they are to stand so. */
function standing({ paper }: BookletInput, wished: Standing): Standing {
  return wished === 'beside' && sheets[paper].narrow ? 'under' : wished;
}

interface SaidProps {
  readonly input: BookletInput;
  readonly say: Say;
  /** Under one another unless given. */
  readonly how?: Standing;
}

/** A text in every language of the booklet, each in an element of its own; plain where there is but one. */
export function Said({ input, say, how = 'under' }: SaidProps): ReactNode {
  const each = inEach(input);
  if (each.length === 1) return <Spoken text={say(input)} />;
  return (
    <span className={`in-languages ${standing(input, how)}`}>
      {each.map((one, index) => (
        <Fragment key={one.words.lang}>
          {index > 0 && (how === 'inline' ? ' · ' : ' ')}
          <OneLanguage of={one} page={input}><Spoken text={say(one)} /></OneLanguage>
        </Fragment>
      ))}
    </span>
  );
}

interface OneLanguageProps {
  readonly of: BookletInput;
  readonly page: BookletInput;
  readonly children: ReactNode;
}

/** Holds a text of one language. */
function OneLanguage({ of, page, children }: OneLanguageProps): ReactNode {
  return <span className="in-language" {...marked(of, page)}>{children}</span>;
}

interface Marks {
  readonly lang: string;
  readonly dir: 'ltr' | 'rtl';
  readonly style?: { readonly fontSize: string };
}

/** What an element with a text of one of the page's languages is marked with; its letters are as large as that language wants them beside those of the page, and 10 pt at the least (ISO/IEC Guide 37). */
export function marked({ words: { lang, about } }: BookletInput, page: BookletInput): Marks {
  const scale = Math.round((1000 * about.textScale) / page.words.about.textScale) / 1000;
  return { lang, dir: about.direction, ...(scale === 1 ? {} : { style: { fontSize: scale < 1 ? `max(10pt, ${scale}em)` : `${scale}em` } }) };
}

/** The booklet once in each of its languages. */
export function inEach(input: BookletInput): readonly BookletInput[] {
  return languagesOf(input).map((words) => ({ ...input, words }));
}

interface Reckoning extends Setting {
  readonly how?: Standing;
  /** Distance of Latin's lines, mm; that of running text unless given. */
  readonly leading?: number;
}

/** Height of a text in all languages of the booklet where it has `width` mm: as on paper, or more, mm. */
export function saidHeight(input: BookletInput, say: Say, width: number, { how = 'under', leading = lineHeight, ...setting }: Reckoning): number {
  const each = inEach(input);
  const beside = standing(input, how) === 'beside';
  const room = beside ? (width - columnGap * (each.length - 1)) / each.length : width;
  const heights = each.map((one) => textLines(one.words, say(one), room, setting) * leading * lineScale(one.words));
  return beside ? Math.max(...heights) : heights.reduce((sum, height) => sum + height, 0);
}
