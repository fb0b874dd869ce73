import type { Frame, FrameResult, Freedom, Member, NodeLoad, Section, Six, Support } from '../../../src/check/frame/index.ts';

export type Place = readonly [number, number, number];

export const all: readonly Freedom[] = ['ux', 'uy', 'uz', 'rx', 'ry', 'rz'];
export const pinned: readonly Freedom[] = ['ux', 'uy', 'uz'];

/** A frame from nodes by name; whatever is not told is empty. */
export function frameOf(nodes: Readonly<Record<string, Place>>, rest: Partial<Frame>): Frame {
  return {
    nodes: Object.entries(nodes).map(([name, at]) => ({ name, at })),
    members: [], cables: [], supports: [], nodeLoads: [], lineLoads: [], ...rest,
  };
}

export const bar = (from: string, to: string, section: Section, more: Partial<Member> = {}): Member =>
  ({ name: `${from}-${to}`, from, to, section, ...more });

export const hold = (node: string, held: readonly Freedom[]): Support => ({ node, held });

export const push = (node: string, force: Place, moment: Place = [0, 0, 0]): NodeLoad => ({ node, force, moment });

export const shiftOf = (result: FrameResult, node: string, freedom: Freedom): number =>
  result.displacements[node]?.[all.indexOf(freedom)] ?? NaN;

export const reactionOf = (result: FrameResult, node: string, freedom: Freedom): number =>
  result.reactions[node]?.[all.indexOf(freedom)] ?? NaN;

export const endOf = (result: FrameResult, member: string, end: 'from' | 'to'): Six =>
  result.memberForces[member]?.[end] ?? [NaN, NaN, NaN, NaN, NaN, NaN];
