import type { ReactNode } from 'react';
import { loadInKilograms, useCautions, withNumeral } from '../../booklet/index.ts';
import type { Use } from '../../read/index.ts';
import type { Telling } from '../types.ts';
import { chapter } from './chapters.tsx';
import { Check } from './checks.tsx';
import type { Glyph } from '../glyph-store.ts';
import type { GuidePage, Maker } from './page.ts';
import { Mark, Said } from './said.tsx';
import { Signs } from './signs.tsx';

type Carrier = Parameters<typeof withNumeral>[1];

const carriers: Readonly<Record<Use, Carrier>> = { storage: 'load', table: 'load', seat: 'seat-load', bed: 'bed-load' };

/** What the item may carry and for whom it is, fixing to the wall, and the cautions for use. */
export function usePage(maker: Maker): GuidePage {
  const { base, say } = maker;
  const { advice } = base.report;
  const { cautions, sentences } = useCautions[base.model.use];
  return chapter(maker, 'load', 'after', (
    <>
      <Load maker={maker} />
      {advice.fixToWall && <Told maker={maker} glyph={base.glyphs.plain('wall-fix')} label={({ words }) => words.t('booklet.fix-to-wall')} />}
      {base.model.use === 'bed' && <Check maker={maker} check={{ kind: 'pair', name: 'bed-child' }} />}
      {base.model.use === 'bed' && <Mattress maker={maker} />}
      <Signs maker={maker} cautions={[...cautions, ...(advice.fixToWall ? ['tipping' as const] : []), 'manual']} sentences={sentences} />
      <Said className="draft" phrase={say(({ words: { about, review, t } }) => (about.source ? t('booklet.colophon.source-text') : review === null ? t('booklet.colophon.draft') : t('booklet.colophon.reviewed', { reviewer: review.by })))} />
    </>
  ));
}

/** A large pictogram and its sentence. */
function Told({ maker, glyph, label }: { readonly maker: Maker; readonly glyph: Glyph; readonly label: (telling: Telling) => string }): ReactNode {
  const phrase = maker.say(label);
  return (
    <div className="told">
      <Mark maker={maker} glyph={glyph} label={phrase} />
      <Said phrase={phrase} />
    </div>
  );
}

/** The load that the checks support: on each deck, or on the one seat or bed. A cross where they support none. */
function Load({ maker }: { readonly maker: Maker }): ReactNode {
  const { base } = maker;
  const { safeLoadPerDeck } = base.report.advice;
  const kilograms = safeLoadPerDeck === null || base.despiteFindings ? 0 : loadInKilograms(safeLoadPerDeck);
  const svg = withNumeral(base, carriers[base.model.use], kilograms > 0 ? kilograms : null, 'kg');
  return <Told maker={maker} glyph={{ width: 48, svg }} label={(telling) => (kilograms > 0 ? supported(telling, kilograms) : telling.words.t('booklet.no-safe-load'))} />;
}

function supported({ words, model }: Telling, kilograms: number): string {
  const load = words.measure(kilograms, 'kg');
  switch (model.use) {
    case 'seat': return words.t('booklet.safe-seat', { load });
    case 'bed': return words.t('booklet.safe-bed', { load });
    default: return words.t('booklet.safe-load', { load, count: model.deckTops.length });
  }
}

/** The thickest mattress that leaves a bed's guard high enough. */
function Mattress({ maker }: { readonly maker: Maker }): ReactNode {
  const { base } = maker;
  const thickness = base.report.advice.mattress;
  if (thickness === null) return null;
  return <Told maker={maker} glyph={{ width: 48, svg: withNumeral(base, 'mattress', thickness, 'mm', true) }} label={({ words }) => words.t('booklet.mattress', { thickness: words.measure(thickness, 'mm') })} />;
}
