import type { ReactNode } from 'react';
import { CheckPictures } from './check-pictures.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { withNumeral } from './load-figures.tsx';
import { sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Heights of the pictures, mm. */
const pictureHeight = { wide: 22, narrow: 18 } as const;
const mattressHeight = 34;

/** For which child a bed is, and the thickest mattress that leaves the guard high enough. */
export function OnlyFor({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, edition } = input;
  return (
    <div className="only-for">
      <div className="told">
        <div className="pair"><CheckPictures input={input} check={{ kind: 'pair', name: 'bed-child' }} height={sheets[input.paper].narrow ? pictureHeight.narrow : pictureHeight.wide} /></div>
        {edition === 'words' && <p>{words.t('checks.bed-child')}</p>}
      </div>
      <Mattress input={input} />
    </div>
  );
}

function Mattress({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, edition, model } = input;
  const thickness = model.parameters['mattress']?.value;
  if (thickness === undefined) return null;
  const said = words.t('booklet.mattress', { thickness: words.measure(thickness, 'mm') });
  return (
    <div className="told">
      <GlyphMark glyph={{ width: 48, svg: withNumeral(input, 'mattress', thickness, 'mm', true) }} label={said} height={mattressHeight} />
      {edition === 'words' && <p><Spoken text={said} /></p>}
    </div>
  );
}
