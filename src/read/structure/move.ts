import { mirrored } from './mirror.ts';
import type { Growing } from './growing.ts';
import type { Instance } from './scope.ts';
import type { Named, SkeletonFitting, Triple } from './types.ts';

/** Where a piece comes to stand: mirrored, then turned about the upright, then moved. */
export interface Placing {
  readonly at: Triple;
  /** rad */
  readonly turn: number;
  readonly mirror: 'x' | 'y' | null;
}

/** Puts the parts of a piece among those of the item, named after it; without a placing they are only marked as broken. */
export function moveParts(parts: Growing, placing: Placing | null, user: Instance, growing: Growing): void {
  const own = (name: string): string => `${user.name}/${name}`;
  for (const kind of ['points', 'bars', 'panels', 'cables', 'fittings'] as const) {
    for (const name of parts.broken[kind]) growing.broken[kind].add(`${user.of}/${name}`);
    if (placing === null) for (const { of } of parts[kind].values()) growing.broken[kind].add(`${user.of}/${of}`);
  }
  if (placing === null) return;
  const named = <Part extends Named>(part: Part): Part => ({ ...part, name: own(part.name), of: `${user.of}/${part.of}`, index: [...user.index, ...part.index] });
  const put = <Part extends Named>(into: Map<string, Part>, part: Part): void => { into.set(part.name, part); };
  for (const point of parts.points.values()) put(growing.points, { ...named(point), at: placed(point.at, placing) });
  for (const bar of parts.bars.values()) put(growing.bars, { ...named(bar), from: own(bar.from), to: own(bar.to), through: bar.through.map(own) });
  for (const panel of parts.panels.values()) {
    const face = turned(panel.face, placing);
    put(growing.panels, panel.is === 'flat'
      ? { ...named(panel), face, on: panel.on.map(own) }
      : { ...named(panel), face, loop: panel.loop.map(own), wrap: panel.wrap.map(own) });
  }
  for (const cable of parts.cables.values()) put(growing.cables, { ...named(cable), face: turned(cable.face, placing), from: own(cable.from), to: own(cable.to) });
  for (const fitting of parts.fittings.values()) put(growing.fittings, movedFitting(named(fitting), own, placing));
}

const movedFitting = (fitting: SkeletonFitting, own: (name: string) => string, placing: Placing): SkeletonFitting => ({
  ...fitting,
  on: own(fitting.on),
  at: 'point' in fitting.at ? { point: own(fitting.at.point) } : fitting.at,
  panel: fitting.panel === null ? null : own(fitting.panel),
  face: fitting.face === null ? null : turned(fitting.face, placing),
});

function turned(direction: Triple, { turn, mirror }: Placing): Triple {
  const [x, y, z] = mirror === null ? direction : mirrored(direction, mirror);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [cos * x - sin * y, sin * x + cos * y, z];
}

function placed(point: Triple, placing: Placing): Triple {
  const [x, y, z] = turned(point, placing);
  return [x + placing.at[0], y + placing.at[1], z + placing.at[2]];
}
