import { freedoms, type Freedom } from './types.ts';

/** The frame as given cannot be worked out; the message says what is wrong and what would be right. */
export class FrameError extends Error {}

const motions: Readonly<Record<Freedom, string>> = {
  ux: 'moves freely along x', uy: 'moves freely along y', uz: 'moves freely along z',
  rx: 'turns freely round x', ry: 'turns freely round y', rz: 'turns freely round z',
};

/** The frame is a mechanism: it gives way with no resistance. Names the node and the freedom that move most. */
export class MechanismError extends FrameError {
  readonly node: string;
  readonly freedom: Freedom;

  constructor(loose: Loose) {
    super(`The frame is a mechanism: node "${loose.node}" ${motions[loose.freedom]}. Hold it, brace it, or join it stiffly.`);
    this.node = loose.node;
    this.freedom = loose.freedom;
  }
}

export interface Loose {
  readonly node: string;
  readonly freedom: Freedom;
}

/** Name of a freedom by its number: six to each node. */
export const looseAt = (nodes: readonly { readonly name: string }[], index: number): Loose => ({
  node: nodes[Math.floor(index / 6)]?.name ?? '',
  freedom: freedoms[index % 6] ?? 'ux',
});
