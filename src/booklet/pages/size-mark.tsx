import type { ReactNode } from 'react';
import type { Model } from '../../model/index.ts';
import { sizeName } from './names.ts';
import type { BookletInput } from './types.ts';

interface SizeMarkProps {
  readonly input: Pick<BookletInput, 'model' | 'variants' | 'words'>;
  /** The size that is marked; the booklet's own unless given. */
  readonly size?: Model;
  /** mm */
  readonly height: number;
  /** What it says, for those who hear the page; the size's name unless given. */
  readonly label?: string;
}

/** One upright bar for each size variant, higher from one to the next; the marked one is filled. */
export function SizeMark({ input, size = input.model, height, label }: SizeMarkProps): ReactNode {
  const { variants, words } = input;
  const step = 4;
  return (
    <svg
      className="size-mark"
      role="img"
      direction="ltr"
      aria-label={label ?? words.t('booklet.alt.size', { name: sizeName(input, size) })}
      width={`${(variants.length * step * height) / 12}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${variants.length * step} 12`}
    >
      {variants.map((variant, index) => {
        const tall = 5 + (6 * (index + 1)) / variants.length;
        return <rect key={variant.size} x={index * step + 0.5} y={11.5 - tall} width={2.6} height={tall} fill={variant.size === size.size ? '#000' : '#fff'} stroke="#000" strokeWidth={0.8} />;
      })}
    </svg>
  );
}
