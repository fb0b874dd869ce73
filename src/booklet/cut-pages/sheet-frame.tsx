import type { ReactNode } from 'react';
import type { Serves, Source } from '../../cut/index.ts';
import { pictureOf, type PictureOf } from '../../draw/index.ts';
import { Spoken } from '../pages/spoken.tsx';
import type { Glyph } from '../pages/types.ts';
import { PicturePlace } from '../pages/picture-place.tsx';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { letteredPieces, PieceTable } from './pieces.tsx';
import { partOf, sidesOf, sourceOf } from './said.ts';
import { Tally } from './tally.tsx';
import type { CutPagesInput } from './types.ts';

interface SheetFrameProps {
  readonly input: CutPagesInput;
  readonly kind: 'tube' | 'panel';
  readonly glyph: Glyph;
  readonly glyphLabel: string;
  readonly source: Source;
  readonly sides: readonly number[];
  readonly times: number;
  readonly picture: PictureOf;
  readonly alt: string;
  /** Letters of the pieces that come out of one. */
  readonly letters: readonly string[];
  readonly rule: string;
  readonly damaged: boolean;
  /** Off-cuts of one that serve something. */
  readonly keep: readonly { readonly sides: readonly number[]; readonly serves: readonly Serves[] }[];
}

/** A page for stock pieces cut alike: how many, from which pile, the drawing, the pieces, off-cuts to keep, boxes to tick. */
export function SheetFrame({ input, kind, glyph, glyphLabel, source, sides, times, picture, alt, letters, rule, damaged, keep }: SheetFrameProps): ReactNode {
  const { words, pictures, placePicture } = input;
  const size = pictureOf(pictures, picture, 'cut plan');
  const pieces = letteredPieces(input).flatMap((piece) => {
    const count = letters.filter((letter) => letter === piece.letter).length;
    return count === 0 ? [] : [{ piece, count }];
  });
  return (
    <div className="cut-sheet">
      <div className="cut-head">
        <span className="times"><Spoken text={words.times(times)} /></span>
        <GlyphMark glyph={glyph} label={glyphLabel} height={13} />
        <h1 className="chapter">{words.t(`cutting.${kind}`)}</h1>
        <span className="which"><Spoken text={sidesOf(input, sides)} /> · <Spoken text={sourceOf(input, source)} /></span>
      </div>
      <div className="main">
        <p className="rule">{rule}</p>
        <PicturePlace place={placePicture} of={picture} size={size} alt={alt} />
        {damaged && <p>{words.t('cutting.crossed-out')}</p>}
        <PieceTable input={input} pieces={pieces} />
        {keep.length > 0 && <Keep input={input} keep={keep} />}
        <p className="cut-note">{words.t('cutting.tick')}</p>
        <Tally count={times} label={words.t('cutting.tick')} />
      </div>
    </div>
  );
}

function Keep({ input, keep }: Pick<SheetFrameProps, 'input' | 'keep'>): ReactNode {
  return (
    <table className="cut-table keep">
      <tbody>
        {keep.map(({ sides, serves }, index) => (
          <tr key={index}>
            <th scope="row">{index === 0 ? input.words.t('cutting.keep') : ''}</th>
            <td><Spoken text={sidesOf(input, sides)} /></td>
            <td>{serves.map((each, at) => <div className="use" key={at}>{partOf(input, each)}, <Spoken text={sidesOf(input, each.sides)} /></div>)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
