import type { PartKind } from '../model/types.ts';
import { facts as bar } from './bar/facts.ts';
import { facts as cable } from './cable/facts.ts';
import { facts as fitting } from './fitting/facts.ts';
import { facts as flatPanel } from './flat-panel/facts.ts';
import { facts as joint } from './joint/facts.ts';
import { facts as jointPin } from './joint-pin/facts.ts';
import { facts as longTube } from './long-tube/facts.ts';
import { facts as panel } from './panel/facts.ts';
import { facts as panelPin } from './panel-pin/facts.ts';
import { facts as post } from './post/facts.ts';
import { facts as shortTube } from './short-tube/facts.ts';
import { facts as wingNut } from './wing-nut/facts.ts';
import type { CountedAs, PartFacts } from './types.ts';

export type * from './types.ts';

/** Every kind of part, in the order in which parts are listed: the big ones first. */
export const PARTS: Readonly<Record<PartKind, PartFacts>> = {
  panel,
  'flat-panel': flatPanel,
  'long-tube': longTube,
  'short-tube': shortTube,
  post,
  bar,
  cable,
  joint,
  fitting,
  'panel-pin': panelPin,
  'joint-pin': jointPin,
  'wing-nut': wingNut,
};

export const PART_KINDS = Object.keys(PARTS) as readonly PartKind[];

/** Kinds that are only counted, and what they are counted under in a stock. */
export const COUNTED_KINDS = PART_KINDS.flatMap((kind): readonly { readonly kind: PartKind; readonly counted: CountedAs }[] => {
  const { stock } = PARTS[kind];
  return 'counted' in stock ? [{ kind, counted: stock.counted }] : [];
});
