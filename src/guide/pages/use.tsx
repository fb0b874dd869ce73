import type { ReactNode } from 'react';
import { useCautions, withNumeral } from '../../booklet/index.ts';
import { ForWhom, Load, Told, Untested } from './carries.tsx';
import { chapter } from './chapters.tsx';
import type { GuidePage, Maker } from './page.ts';
import { Said } from './said.tsx';
import { Signs } from './signs.tsx';

/** What the item may carry and for whom it is, fixing to the wall, and the cautions for use. */
export function usePage(maker: Maker): GuidePage {
  const { base, say } = maker;
  const { advice } = base.report;
  const { cautions, sentences } = useCautions(base);
  return chapter(maker, 'load', 'after', (
    <>
      <Load maker={maker} />
      <ForWhom maker={maker} />
      <Untested maker={maker} />
      {advice.wall !== null && <Told maker={maker} glyph={base.glyphs.plain('wall-fix')} label={({ words }) => words.t('booklet.fix-to-wall')} />}
      {base.model.use === 'bed' && <Mattress maker={maker} />}
      <Signs maker={maker} cautions={[...cautions, ...(advice.wall !== null ? ['tipping' as const] : []), 'manual']} sentences={sentences} />
      <Said className="draft" phrase={say(({ words: { about, review, t } }) => (about.source ? t('booklet.colophon.source-text') : review === null ? t('booklet.colophon.draft') : t('booklet.colophon.reviewed', { reviewer: review.by })))} />
    </>
  ));
}

/** The thickest mattress that leaves a bed's guard high enough. */
function Mattress({ maker }: { readonly maker: Maker }): ReactNode {
  const { base } = maker;
  const thickness = base.report.advice.mattress;
  if (thickness === null) return null;
  return <Told maker={maker} glyph={{ width: 48, svg: withNumeral(base, 'mattress', thickness, 'mm', true) }} label={({ words }) => words.t('booklet.mattress', { thickness: words.measure(thickness, 'mm') })} />;
}
