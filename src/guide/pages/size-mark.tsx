import type { ReactNode } from 'react';
import { sizeFronts, sizeName } from '../../booklet/index.ts';
import { colours } from '../../draw/index.ts';
import type { Glyph } from '../glyph-store.ts';
import type { Maker } from './page.ts';
import { Mark } from './said.tsx';

/** Units of a pictogram's grid to one of the fronts'. */
const SCALE = 4;

/** All sizes in outline from the front, as on the booklet's cover; this guide's stands out. */
export function SizeMark({ maker }: { readonly maker: Maker }): ReactNode {
  return <Mark maker={maker} className="sizes" glyph={sizeMark(maker)} label={maker.say(({ words, ...telling }) => words.t('booklet.alt.size', { name: sizeName({ words, ...telling }, telling.model) }))} />;
}

function sizeMark({ base: { variants, model } }: Maker): Glyph {
  const { width, fronts } = sizeFronts(variants, model.size);
  const svg = fronts.map(({ path, isMarked }) => `<path transform="scale(${SCALE})" d="${path}" fill="none" stroke="${colours.ink}" stroke-linecap="round" stroke-width="${isMarked ? 1.2 : 0.4}"/>`).join('');
  return { width: Math.round(width * SCALE), svg };
}
