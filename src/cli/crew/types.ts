import type { ToFinish } from '../../booklet/index.ts';
import type { Report } from '../../check/index.ts';
import type { TubeCutPlan } from '../../cut/index.ts';
import type { Format, Picture } from '../../draw/index.ts';
import type { Model } from '../../model/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { Item } from '../../read/index.ts';

/** Work that a hand of the crew can do by itself: plain data in, plain data out. */
export interface Works {
  /** The order of the steps but for how it is fixed to a wall, which the checks tell; each motion proven. And how the tubes are sawn. */
  readonly plan: { readonly given: { readonly model: Model; readonly order: Item['order'] }; readonly made: { readonly plan: Plan; readonly cuts: TubeCutPlan } };
  /** What a size's pictures need and its model alone tells: its solids, and the lines of the finished item. */
  readonly ready: { readonly given: Pick<Drawing, 'of' | 'model'>; readonly made: null };
  /** Some groups of a size's pictures, from the first to before the end (see `pictureGroups`). */
  readonly draw: { readonly given: Drawing & { readonly from: number; readonly to: number }; readonly made: readonly PictureSets[] };
  /** The finished copies of printed pages. */
  readonly finish: { readonly given: ToFinish; readonly made: readonly Uint8Array[] };
  /** The phone guide of a size, as text. */
  readonly guide: { readonly given: Guided; readonly made: string };
}

export type PictureSets = Readonly<Record<Format, readonly Picture[]>>;

export interface Drawing {
  /** Tells sizes apart: what was found out of one is used for its next pictures. */
  readonly of: string;
  readonly model: Model;
  readonly plan: Plan;
  readonly cuts: TubeCutPlan;
  readonly formats: readonly Format[];
}

export interface Guided {
  readonly item: Pick<Item, 'name' | 'revision'>;
  readonly model: Model;
  readonly plan: Plan;
  readonly report: Report;
  readonly pictures: readonly Picture[];
  readonly contentMark: string;
  readonly variants: readonly Model[];
  /** Its languages, of those under `locales/`. */
  readonly langs: readonly string[];
}

export type Work = keyof Works;

export interface Job<Kind extends Work = Work> {
  readonly work: Kind;
  readonly given: Works[Kind]['given'];
}

/** What a hand answers with: the result, or that it failed. */
export type Answer = { readonly made: unknown } | { readonly failed: string };
