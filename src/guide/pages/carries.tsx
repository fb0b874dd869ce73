import type { ReactNode } from 'react';
import { loadsSaid, printedLoads, signForWhom, withNumeral } from '../../booklet/index.ts';
import type { Use } from '../../read/index.ts';
import type { Glyph } from '../glyph-store.ts';
import type { Telling } from '../types.ts';
import { Check } from './checks.tsx';
import type { Maker } from './page.ts';
import { Mark, Said } from './said.tsx';

type Carrier = Parameters<typeof withNumeral>[1];

const carriers: Readonly<Record<Use, Carrier>> = { storage: 'load', table: 'load', seat: 'seat-load', bed: 'bed-load' };

/** A large pictogram and its sentence. */
export function Told({ maker, glyph, label }: { readonly maker: Maker; readonly glyph: Glyph; readonly label: (telling: Telling) => string }): ReactNode {
  const phrase = maker.say(label);
  return (
    <div className="told">
      <Mark maker={maker} glyph={glyph} label={phrase} />
      <Said phrase={phrase} />
    </div>
  );
}

/** The load that the checks support: on each level from the highest down, or on the seat or bed. A cross where they support none. */
export function Load({ maker }: { readonly maker: Maker }): ReactNode {
  const { base } = maker;
  const printed = base.despiteFindings ? null : printedLoads(base.report.advice);
  const phrase = maker.say(({ words, model }) => loadsSaid(words, model, printed));
  return (
    <div className="told">
      {(printed?.levels ?? [null]).map((kilograms, index) => <Mark key={index} maker={maker} glyph={{ width: 48, svg: withNumeral(base, carriers[base.model.use], kilograms, 'kg') }} label={phrase} />)}
      <Said phrase={phrase} />
    </div>
  );
}

/** For whom the item's file says it is, and for whom not. */
export function ForWhom({ maker }: { readonly maker: Maker }): ReactNode {
  const sign = signForWhom(maker.base.report.advice.people);
  if (sign === null) return <Check maker={maker} check={{ kind: 'pair', name: 'bed-child' }} />;
  return <Told maker={maker} glyph={maker.base.glyphs.plain(sign)} label={({ words }) => words.t(`booklet.${sign}`)} />;
}

/** Nobody has tested the joints, and the load is lower for it. */
export function Untested({ maker }: { readonly maker: Maker }): ReactNode {
  if (!maker.base.report.advice.untestedJoint) return null;
  return <Told maker={maker} glyph={maker.base.glyphs.plain('untested-joint')} label={({ words }) => words.t('booklet.untested-joint')} />;
}
