import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { Carries } from './carries.tsx';
import { pageRoom } from './foot.tsx';
import { Languages } from './languages.tsx';
import { itemAndSize, itemName, overall, sizeName } from './names.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { sheets, textSize } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import { textLines } from './setting.ts';
import { Said, inSeveral, saidHeight } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** The item's name: pt and lines in mm, for one language and for several, on a wide page and a narrow one; white over it, mm. */
export const nameSizes = { wide: { one: 40, several: 28 }, narrow: { one: 28, several: 20 } } as const;
export const nameLines = { wide: { one: 18, several: 13 }, narrow: { one: 13, several: 10 } } as const;
export const namePad = { wide: 10, narrow: 4 } as const;
/** White under the name, for letters that hang below their line, mm. */
export const nameFoot = 1;
/** Size variant and measures: lines; white over and under the facts; the column of the revision, mm. */
export const factLine = 7;
export const factPad = 5;
/** Line over the facts, mm. */
const factRule = 0.3;
export const coverFoot = 4;
export const printWidth = { wide: 70, narrow: 50 } as const;
/** The size's name and measures: their letters, pt; room on the safe side, mm. */
export const sizeSize = { wide: 14, narrow: 12 } as const;
const sizeRoom = { wide: 60, narrow: 50 } as const;
/** Lines of the languages' names, which are in many scripts, and the white over them, mm. */
export const namesLine = 6.5;
export const namesPad = 3;
/** The mark of the size, alone at the top or among the facts, mm. */
const soleMark = 22;
const mark = 14;

/** The signs of load and for whom it is: their height, and the white under them, mm. */
const carriesHeight = { wide: 18, narrow: 13 } as const;
export const carriesPad = 4;

/** The item's name, the finished item, what it carries and for whom it is, its size, and which print this is. Without words the mark of its size stands for its name. */
export function cover(input: BookletInput): readonly ReactNode[] {
  const { model, edition } = input;
  const wordless = edition === 'pictures';
  const scale = Math.min(1, (pageRoom(input) - nameHeight(input) - factsHeight(input)) / pictureSize(input, { what: 'finished' }).height);
  return [(
    <div className={inSeveral(input) ? 'cover several' : 'cover'} key="cover">
      <h1 className="name">{wordless ? <SizeMark input={input} height={soleMark} label={itemAndSize(input)} /> : <Said input={input} say={itemName} />}</h1>
      <div className="view">
        <PlacedPicture input={input} of={{ what: 'finished' }} alt={finishedAlt(input)} scale={scale} />
      </div>
      <Carries input={input} height={carriesHeight[widthOf(input)]} />
      <div className="facts">
        {!wordless && <SizeMark input={input} isAlone height={mark} />}
        <div>
          {!wordless && <p className="size"><Said input={input} say={(each) => sizeName(each, model)} /></p>}
          <p className="overall"><Spoken text={overall(input)} /></p>
        </div>
        <Print input={input} />
      </div>
      {!wordless && <p className="languages"><Languages input={input} /></p>}
    </div>
  )];
}

function widthOf({ paper }: BookletInput): 'wide' | 'narrow' {
  return sheets[paper].narrow ? 'narrow' : 'wide';
}

/** Heights with the white round them, mm. */
function nameHeight(input: BookletInput): number {
  const page = widthOf(input);
  if (input.edition === 'pictures') return namePad[page] + soleMark + nameFoot;
  const many = inSeveral(input) ? 'several' : 'one';
  return namePad[page] + nameFoot + saidHeight(input, itemName, sheets[input.paper].main, { size: nameSizes[page][many], bold: true, leading: nameLines[page][many] });
}

function factsHeight(input: BookletInput): number {
  const { words, model, languages = [words.about.name] } = input;
  const page = widthOf(input);
  const frame = carriesHeight[page] + carriesPad + coverFoot + factRule + factPad;
  if (input.edition === 'pictures') return frame + factLine;
  const sizes = saidHeight(input, (each) => sizeName(each, model), sizeRoom[page], { size: sizeSize[page], bold: true, leading: factLine }) + factLine;
  // Other scripts' letters are wider than those of the booklet's: reckoned as bold.
  const names = textLines(words, languages.join(' · '), sheets[input.paper].main, { size: textSize, bold: true });
  return frame + Math.max(mark, sizes, saidHeight(input, revision, printWidth[page], { size: textSize })) + namesPad + names * namesLine;
}

/** The finished item's picture in words. */
export function finishedAlt(input: Pick<BookletInput, 'words' | 'model'>): string {
  return input.words.t('booklet.alt.finished', { item: itemName(input), size: sizeName(input, input.model), overall: overall(input) });
}

const revision = ({ words, revision: count, contentMark }: BookletInput): string => `${words.t('booklet.revision', { revision: count })} · ${isolate(contentMark)}`;

/** Revision and content mark. */
function Print({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, edition, revision: count, contentMark } = input;
  if (edition === 'pictures') return <div className="print"><p><Spoken text={isolate(`${words.number(count)} · ${contentMark}`)} /></p></div>;
  return (
    <div className="print">
      <p><Said input={input} say={revision} /></p>
    </div>
  );
}
