import type { Case } from '../types.ts';
import { rulesOf } from '../rules.ts';
import { overhangOf, spansOf } from './edges.ts';

/** Where the load of a deck may stand, as it works on a tube: by statics from where its middle is. */
export interface Standing {
  readonly stands: 'even' | 'one-sided' | 'in the middle' | 'at the edge';
  readonly tubes: 'long-tube' | 'short-tube';
  /** Of the load, on the nearer of two opposite tubes. */
  readonly share: number;
  /** Length of tube that the load works on, in its middle, mm. */
  readonly stretch: number;
  readonly span: number;
  /** Whether the sag is judged: a load in one place must not break the tube, and may be seen to sag. */
  readonly sags: boolean;
}

/**
 * Even over the deck; on one half of it; all in one place in the middle and at an edge. The two longer tubes take
 * everything from post to post; at a shorter edge the short tube takes what stands there.
 */
export function standingsOf(given: Case): readonly Standing[] {
  const [x, y] = spansOf(given);
  const { oneSided } = given.limits;
  const { pad, padInset } = rulesOf(given);
  const bearer = x >= y ? { tubes: 'long-tube', span: x } as const : { tubes: 'short-tube', span: y } as const;
  const inside = padInset - overhangOf(given);
  return [
    { ...bearer, stands: 'even', share: 0.5, stretch: bearer.span, sags: true },
    { ...bearer, stands: 'one-sided', share: oneSided.value, stretch: bearer.span, sags: true },
    { ...bearer, stands: 'in the middle', share: 0.5, stretch: pad.value, sags: false },
    { tubes: 'long-tube', span: x, stands: 'at the edge', share: nearShare(inside, y), stretch: pad.value, sags: false },
    { tubes: 'short-tube', span: y, stands: 'at the edge', share: nearShare(inside, x), stretch: pad.value, sags: false },
  ];
}

/** Share of a load on the nearer of two supports, `inside` mm from it; all of it where it stands outside. */
export const nearShare = (inside: number, span: number): number => Math.min(1, 1 - inside / span);

/**
 * Share of a deck's load that counts on each of four posts which stiff decks make give way together: (1 + e / r) / 4, e how far
 * the load's middle lies off the deck's, r from there to a corner. The greatest of Σ Pᵢ uᵢ² / Σ uᵢ² over all shifts and
 * turns of a stiff deck (Rayleigh's quotient, (C)); a load on one half counts as in a square far deeper than wide.
 */
export function sharedByPosts(given: Case): number {
  const [x, y] = spansOf(given);
  const inside = rulesOf(given).padInset - overhangOf(given);
  const off = (span: number): number => Math.max(0, span / 2 - Math.max(0, inside));
  return Math.max(given.limits.cornerShare.value, (1 + Math.hypot(off(x), off(y)) / Math.hypot(x / 2, y / 2)) / 4);
}

/** Share of a deck's load on the corner that bears most: on one half of the deck, or in one place at the corner. */
export function cornerShare(given: Case): number {
  const [x, y] = spansOf(given);
  const inside = rulesOf(given).padInset - overhangOf(given);
  return Math.max(given.limits.cornerShare.value, nearShare(inside, x) * nearShare(inside, y));
}
