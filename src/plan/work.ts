import type { Job } from './jobs.ts';
import type { Action, Caution, Tool, WorkerCheck } from './types.ts';

/** What a kind of work takes, whatever the item: common practice, no source. Minutes are for one worker or pair. */
export interface Work {
  readonly tools: readonly Tool[];
  readonly people: 1 | 2;
  readonly cautions: readonly Caution[];
  readonly check: WorkerCheck;
  readonly minutes: number;
}

/** The work of a job: a flat panel has fewer holes to drill than the posts. */
export const workOf = ({ action, detail }: Pick<Job, 'action' | 'detail'>): Work =>
  (action === 'drill' && detail.on === 'plate' ? { ...WORK.drill, minutes: 6 } : WORK[action]);

const pair = (name: string): WorkerCheck => ({ kind: 'pair', name });

export const WORK: Readonly<Record<Action, Work>> = {
  'cut-tubes': { tools: ['tape', 'pencil', 'saw'], people: 2, cautions: ['dust', 'eyes', 'gloves'], check: pair('cut-square'), minutes: 40 },
  'cut-blank': { tools: ['tape', 'pencil', 'straight-edge', 'knife'], people: 2, cautions: ['sharp', 'gloves'], check: pair('mark'), minutes: 8 },
  'mark-inside': { tools: ['tape', 'pencil', 'straight-edge'], people: 1, cautions: [], check: pair('mark'), minutes: 4 },
  'mark-creases': { tools: ['tape', 'pencil', 'straight-edge'], people: 1, cautions: [], check: pair('mark'), minutes: 12 },
  'mark-notches': { tools: ['tape', 'pencil', 'straight-edge'], people: 1, cautions: [], check: pair('mark'), minutes: 5 },
  'punch-holes': { tools: ['tape', 'punch', 'mallet'], people: 1, cautions: ['eyes'], check: pair('mark'), minutes: 8 },
  'cut-notches': { tools: ['straight-edge', 'knife'], people: 1, cautions: ['sharp', 'gloves'], check: pair('notch'), minutes: 5 },
  crease: { tools: ['straight-edge', 'creaser'], people: 2, cautions: [], check: pair('crease'), minutes: 8 },
  'half-cut': { tools: ['straight-edge', 'knife'], people: 2, cautions: ['sharp', 'gloves'], check: pair('half-cut'), minutes: 6 },
  'push-tubes': { tools: ['hands', 'mallet'], people: 1, cautions: ['gloves'], check: pair('tube-home'), minutes: 3 },
  'close-frame': { tools: ['hands', 'mallet'], people: 2, cautions: ['gloves'], check: pair('frame-square'), minutes: 3 },
  'lay-frame': { tools: ['hands'], people: 2, cautions: [], check: pair('frame-centred'), minutes: 2 },
  'wrap-side': { tools: ['hands'], people: 2, cautions: ['crush'], check: pair('tab-flat'), minutes: 3 },
  'pin-ends': { tools: ['mallet'], people: 2, cautions: [], check: pair('pin-home'), minutes: 2 },
  'pin-middle': { tools: ['mallet'], people: 1, cautions: [], check: pair('pin-home'), minutes: 1 },
  'turn-deck': { tools: ['hands'], people: 2, cautions: ['crush'], check: pair('tab-flat'), minutes: 1 },
  'mark-posts': { tools: ['tape', 'pencil'], people: 1, cautions: [], check: pair('mark'), minutes: 8 },
  'stand-decks': { tools: ['tape', 'hands'], people: 2, cautions: ['crush'], check: pair('deck-level'), minutes: 4 },
  'push-posts': { tools: ['hands'], people: 2, cautions: ['crush', 'gloves'], check: pair('deck-level'), minutes: 6 },
  drill: { tools: ['drill'], people: 2, cautions: ['eyes', 'dust'], check: pair('hole-straight'), minutes: 12 },
  'pin-posts': { tools: ['hands'], people: 1, cautions: [], check: pair('nut-tight'), minutes: 6 },
  'turn-item': { tools: ['hands'], people: 2, cautions: ['crush'], check: pair('deck-level'), minutes: 2 },
  'stand-up': { tools: ['hands'], people: 2, cautions: ['crush'], check: pair('rack-upright'), minutes: 2 },
  'cut-panel': { tools: ['tape', 'pencil', 'straight-edge', 'knife', 'punch', 'mallet'], people: 2, cautions: ['sharp', 'eyes', 'gloves'], check: pair('mark'), minutes: 10 },
  'set-rails': { tools: ['hands'], people: 2, cautions: ['crush'], check: pair('deck-level'), minutes: 3 },
  'hold-panel': { tools: ['hands'], people: 2, cautions: [], check: pair('panel-flush'), minutes: 2 },
  'pin-panel': { tools: ['hands'], people: 1, cautions: [], check: pair('nut-tight'), minutes: 4 },
  brace: { tools: ['hands'], people: 2, cautions: [], check: pair('cable-tight'), minutes: 6 },
};
