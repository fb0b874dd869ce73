import type { FlatPattern, Vec2 } from '../../model/index.ts';
import { WHEEL_RIM } from '../../plan/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Skinned } from './hole-marks.ts';

/** Depth of the dent, mm: about a third of the panel, well into the core, and far from the other skin (common practice, no source; the kit tells no figure). */
export const dentOf = ({ thickness }: Pick<FlatPattern, 'thickness'>): number => Math.max(0.5, Math.round((2 * thickness) / 3) / 2);

export interface Dented {
  /** Paper place of the middle of the marked face. */
  readonly at: Vec2;
  readonly scale: number;
  /** Half of the width, mm of paper. */
  readonly half: number;
  /** Places of the dents along the face from the middle, mm of panel. */
  readonly dents: readonly number[];
  /** How deep they are, mm of panel; as deep as they are to be unless told. */
  readonly deep?: number;
}

/** Points along a dent. */
const FINE = 16;

/** A flat panel's section, the marked face up and dented, round at the bottom as the rim is; its skins are lines that nothing breaks. */
export function dented(panel: Skinned, { at: [x, y], scale, half, dents, deep = dentOf(panel) }: Dented): readonly Mark[] {
  const bottom = y + panel.thickness * scale;
  const wide = reachOf(deep);
  const face = (under: number): readonly Vec2[] => [
    [x - half, y + under],
    ...dents.flatMap((place): Vec2[] => Array.from({ length: FINE + 1 }, (_, step): Vec2 => {
      const across = ((2 * step) / FINE - 1) * wide;
      return [x + (place + across) * scale, y + under + deep * scale * 0.5 * (1 + Math.cos((Math.PI * across) / wide))];
    })),
    [x + half, y + under],
  ];
  const ring: readonly Vec2[] = [...face(0), [x + half, bottom], [x - half, bottom]];
  const skin = panel.skin * scale;
  return [
    area('core', ring), outline(pens.cut, ring), line(pens.edge, ...face(skin)),
    line(pens.edge, [x - half, bottom - skin], [x + half, bottom - skin]),
  ];
}

/** How far a dent reaches to either side, mm: a wave whose bottom is as round as the rim. */
const reachOf = (deep: number): number => Math.PI * Math.sqrt((deep * WHEEL_RIM) / 2);
