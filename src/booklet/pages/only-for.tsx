import type { ReactNode } from 'react';
import { CheckPictures } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { withNumeral } from './load-figures.tsx';
import { sheets } from './sheet.ts';
import { toldColumnGap, toldHeight } from './told.ts';
import { Said, type Say } from './tongues.tsx';
import type { BookletInput } from './types.ts';

/** Heights of the pictures, mm. */
const pictureHeight = { wide: 22, narrow: 18 } as const;
const mattressHeight = 34;
/** White under them, and width of the first, mm. */
export const onlyForPad = 5;
export const onlyForWidth = { wide: 91, narrow: 76 } as const;

const child: Say = ({ words }) => words.t('checks.bed-child');
const mattress: Say = ({ words, model }) => words.t('booklet.mattress', { thickness: words.measure(model.parameters['mattress']?.value ?? 0, 'mm') });

/** Height of both with their words and the white under them, mm. */
export function onlyForHeight(input: BookletInput): number {
  const { main, narrow } = sheets[input.paper];
  const width = narrow ? onlyForWidth.narrow : onlyForWidth.wide;
  const beside = main - width - (narrow ? toldColumnGap.narrow : toldColumnGap.wide);
  const thick = input.model.parameters['mattress'] === undefined ? 0 : toldHeight(input, mattress, mattressHeight, beside);
  return onlyForPad + Math.max(toldHeight(input, child, childHeight(input), width), thick);
}

function childHeight({ paper }: BookletInput): number {
  return sheets[paper].narrow ? pictureHeight.narrow : pictureHeight.wide;
}

/** For which child a bed is, and the thickest mattress that leaves the guard high enough. */
export function OnlyFor({ input }: { readonly input: BookletInput }): ReactNode {
  const { edition } = input;
  return (
    <div className="only-for">
      <div className="told">
        <div className="pair"><CheckPictures input={input} check={{ kind: 'pair', name: 'bed-child' }} height={childHeight(input)} /></div>
        {edition === 'words' && <p><Said input={input} say={child} /></p>}
      </div>
      <Mattress input={input} />
    </div>
  );
}

function Mattress({ input }: { readonly input: BookletInput }): ReactNode {
  const { edition, model } = input;
  const thickness = model.parameters['mattress']?.value;
  if (thickness === undefined) return null;
  return (
    <div className="told">
      <GlyphMark glyph={{ width: 48, svg: withNumeral(input, 'mattress', thickness, 'mm', true) }} label={mattress(input)} height={mattressHeight} />
      {edition === 'words' && <p><Said input={input} say={mattress} /></p>}
    </div>
  );
}
