import { colours } from '../../draw/index.ts';
import type { ReactNode } from 'react';
import { sizeName } from '../../booklet/index.ts';
import type { Glyph } from '../glyph-store.ts';
import type { Maker } from './page.ts';
import { Mark } from './said.tsx';

const PITCH = 10;
const LOW = 14;
const HIGH = 44;

/** One upright bar for each size variant, higher from one to the next; this guide's is filled. */
export function SizeBars({ maker }: { readonly maker: Maker }): ReactNode {
  return <Mark maker={maker} glyph={sizeBars(maker)} label={maker.say(({ words, ...telling }) => words.t('booklet.alt.size', { name: sizeName({ words, ...telling }, telling.model) }))} />;
}

function sizeBars({ base: { variants, model } }: Maker): Glyph {
  const bars = variants.map(({ size }, index) => {
    const height = LOW + ((HIGH - LOW) * (index + 1)) / variants.length;
    const fill = size === model.size ? colours.ink : colours.white;
    return `<path d="M${index * PITCH + 2} 46v${-round(height)}h6v${round(height)}z" fill="${fill}" stroke="${colours.ink}" stroke-width="2"/>`;
  });
  return { width: Math.max(48, variants.length * PITCH), svg: bars.join('') };
}

const round = (length: number): number => Math.round(length * 10) / 10;
