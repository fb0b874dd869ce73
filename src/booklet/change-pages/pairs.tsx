import type { ReactNode } from 'react';
import { lineScale } from '../pages/setting.ts';
import { lineHeight } from '../pages/sheet.ts';
import type { Tall } from '../pages/pack.ts';
import { Spoken } from '../pages/spoken.tsx';
import { between, framePad, highest, pageWidth, under } from './measures.ts';
import { saidPicture } from './said.ts';
import type { ChangePagesInput, PicturePair, PlacedSide } from './types.ts';

export type TallPair = Tall & { readonly pair: PicturePair };

const sideWidth = (input: ChangePagesInput): number => (pageWidth(input) - between) / 2;

/** Both sides of a pair are set at one scale, so that what is larger is drawn larger; none is enlarged. */
function scaleOf(input: ChangePagesInput, { before, after }: PicturePair): number {
  const [widest, tallest] = [Math.max(before?.width ?? 0, after.width), Math.max(before?.height ?? 0, after.height)];
  return Math.min(1, (sideWidth(input) - 2 * framePad - 1) / widest, highest / tallest);
}

/** Pairs with their heights on the page. */
export const tallPairs = (input: ChangePagesInput): readonly TallPair[] => input.pairs.map((pair) => {
  const scale = scaleOf(input, pair);
  const height = Math.max(pair.before?.height ?? 0, pair.after.height) * scale + 2 * framePad + lineHeight * lineScale(input.words) * 2 + under + 1;
  return { pair, height };
});

/** A picture as it was beside the picture as it is. */
export function Pair({ input, pair }: { readonly input: ChangePagesInput; readonly pair: PicturePair }): ReactNode {
  const { words } = input;
  const title = saidPicture(input, pair.of);
  const scale = scaleOf(input, pair);
  const side = (name: 'before' | 'after'): ReactNode => {
    const when = words.t(`changes.${name}`);
    return (
      <figure>
        <figcaption>{when}</figcaption>
        <div className="frame">{pair[name] === null ? <p>{words.t('changes.no-picture')}</p> : <Placed input={input} side={pair[name]} scale={scale} alt={`${title} ${when}`} />}</div>
      </figure>
    );
  };
  return (
    <section className="pair">
      <h3><Spoken text={title} /></h3>
      <div className="sides">{side('before')}{side('after')}</div>
    </section>
  );
}

function Placed({ input, side: { id, width, height }, scale, alt }: { readonly input: ChangePagesInput; readonly side: PlacedSide; readonly scale: number; readonly alt: string }): ReactNode {
  const [wide, high] = [width, height].map((length) => Math.floor(length * scale * 1000) / 1000);
  return <div className="picture" style={{ width: `${wide}mm`, height: `${high}mm` }} dangerouslySetInnerHTML={{ __html: input.placePicture({ id, width: wide ?? width, height: high ?? height, alt }) }} />;
}
