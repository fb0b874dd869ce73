import type { Block } from './caution-list.tsx';
import { CheckPictures } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { withNumeral } from './load-figures.tsx';
import { sheets } from './sheet.ts';
import { toldBlocks, type Told } from './told-pair.tsx';
import { toldColumnGap } from './told.ts';
import type { Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Heights of the pictures, mm. */
const pictureHeight = { wide: 22, narrow: 18 } as const;
const mattressHeight = 34;
/** White under them, and width of the first, mm. */
export const onlyForPad = 5;
export const onlyForWidth = { wide: 91, narrow: 76 } as const;

const child: Say = ({ words }) => words.t('checks.bed-child');
const mattress: Say = ({ words, report }) => words.t('booklet.mattress', { thickness: words.measure(report.advice.mattress ?? 0, 'mm') });

/** For which child a bed is, and the thickest mattress that leaves the guard high enough. */
export function onlyFor(input: BookletInput): readonly Block[] {
  const thickness = input.report.advice.mattress;
  return toldBlocks(input, 'only-for', onlyForPad, [childTold(input), ...(thickness === null ? [] : [mattressTold(input, thickness)])]);
}

function childTold(input: BookletInput): Told {
  const size = sheets[input.paper].narrow ? 'narrow' : 'wide';
  const height = pictureHeight[size];
  return {
    name: 'child', say: child, height, width: onlyForWidth[size],
    picture: <div className="pair"><CheckPictures input={input} check={{ kind: 'pair', name: 'bed-child' }} height={height} /></div>,
  };
}

function mattressTold(input: BookletInput, thickness: number): Told {
  const { main, narrow } = sheets[input.paper];
  const size = narrow ? 'narrow' : 'wide';
  return {
    name: 'mattress', say: mattress, height: mattressHeight, width: main - onlyForWidth[size] - toldColumnGap[size],
    picture: <GlyphMark glyph={{ width: 48, svg: withNumeral(input, 'mattress', thickness, 'mm', true) }} label={mattress(input)} height={mattressHeight} />,
  };
}
