import type { FlatPattern, Vec2 } from '../../model/index.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
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

/** A flat panel's section, the marked face up and dented; its skins are lines. */
export function dented(panel: Skinned, { at: [x, y], scale, half, dents, deep: depth = dentOf(panel) }: Dented): readonly Mark[] {
  const deep = depth * scale;
  const bottom = y + panel.thickness * scale;
  const face = (under: number): readonly Vec2[] => [
    [x - half, y + under],
    ...dents.flatMap((place): Vec2[] => [[x + place * scale - deep, y + under], [x + place * scale, y + deep + under], [x + place * scale + deep, y + under]]),
    [x + half, y + under],
  ];
  const ring: readonly Vec2[] = [...face(0), [x + half, bottom], [x - half, bottom]];
  const skin = panel.skin * scale;
  return [
    area('core', ring), outline(pens.cut, ring), line(pens.edge, ...face(skin)),
    line(pens.edge, [x - half, bottom - skin], [x + half, bottom - skin]),
  ];
}

/** Half of the wheel's rim, mm of paper. */
const RIM = 1.6;

/** The rim of the creasing wheel, seen along the crease, its point in the dent, so high, and how it is pressed: lightly or home. */
export function wheelMarks([x, y]: Vec2, high: number, pressed: 'light' | 'home'): readonly Mark[] {
  const up = y - high;
  const ring: readonly Vec2[] = [[x, y], [x + RIM, y - 2.6], [x + RIM, up], [x - RIM, up], [x - RIM, y - 2.6]];
  const beside = x - RIM - 4;
  const low = y - 5;
  return [
    area('white', ring), outline(pens.cut, ring),
    ...(pressed === 'light'
      ? [line(pens.edge, [beside, up + 3], [beside, low - 2]), arrowhead([beside, low], [0, 1], 2.5)]
      : [line({ ...pens.motion, width: 1.6 }, [beside, up], [beside, low - 4]), arrowhead([beside, low], [0, 1], 5, 4.5)]),
  ];
}
