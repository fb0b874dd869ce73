import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../src/model/index.ts';
import type { Look, Mark, Scene, SceneBody, View } from '../../../src/scene/index.ts';
import { composeAlone, composePicture } from '../../../src/draw/picture/index.ts';
import { colours } from '../../../src/draw/kit/colours.ts';
import { finePens, plainPens } from '../../../src/draw/kit/pens.ts';
import { boxMesh, hullDrawing, movedTo } from './stand-in.ts';

const tint = colours.fresh;
const front: View = { towardsEye: [0, -1, 0], up: [0, 0, 1] };
const paper = { width: 120, height: 90 };

function box(id: string, size: Vec3, at: Vec3, look: Look = 'present', kind: SceneBody['kind'] = 'panel'): SceneBody {
  return { id, partId: id, kind, mesh: boxMesh(...size), pose: movedTo(at), look };
}
const scene = (bodies: readonly SceneBody[], marks: readonly Mark[] = [], view = front): Scene => ({ id: 'test', bodies, marks, view });

describe('a picture', () => {
  it('is one svg in mm, left to right, without anything that would print as dots', () => {
    const { svg, width, height } = composePicture(scene([box('a', [100, 10, 50], [0, 0, 0])]), paper, hullDrawing);
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 90" width="120mm" height="90mm" direction="ltr" ')).toBe(true);
    expect([width, height]).toEqual([120, 90]);
    expect(svg).not.toMatch(/mask|filter|image|opacity|NaN|Infinity|\d\.\d{3}/);
  });

  it('keeps the shape: a 2 : 1 front stays 2 : 1, as large as the paper allows, in its middle', () => {
    const { svg } = composePicture(scene([box('a', [100, 10, 50], [0, 0, 0])]), paper, hullDrawing);
    expect(svg).toContain('M1.5 74.25l117 0 0-58.5-117 0z');
  });

  it('tints new bodies and no others', () => {
    const bodies = [box('a', [10, 10, 10], [0, 0, 0], 'new'), box('b', [10, 10, 10], [20, 0, 0]), box('c', [10, 10, 10], [40, 0, 0], 'pale')];
    const { svg, newPartShares } = composePicture(scene(bodies), paper, hullDrawing);
    const tinted = [...svg.matchAll(new RegExp(`d="([^"]*)" class="fill-fresh" fill="${tint}"`, 'g'))];
    expect(tinted).toHaveLength(1);
    expect(tinted[0]?.[1]?.match(/M/g)).toHaveLength(1);
    expect(newPartShares).toEqual({ a: 1 });
  });

  // Grey of a colour on a mono printer: luma of ITU-R BT.601 (from memory), 0.299 R + 0.587 G + 0.114 B.
  it('has a tint between 22 % and 28 % grey', () => {
    const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => parseInt(tint.slice(i, i + 2), 16) / 255);
    const grey = 1 - (0.299 * r + 0.587 * g + 0.114 * b);
    expect(grey).toBeGreaterThan(0.22);
    expect(grey).toBeLessThan(0.28);
  });

  // ISO 128-20 (R): thick to thin 2 : 1; 0.35 goes with 0.18 in its series (R: 0.5/0.35/0.25/0.18 steps of √2).
  it('draws thick and thin lines 2 : 1', () => {
    expect(plainPens.outline.width / plainPens.edge.width).toBe(2);
    expect(finePens.outline.width / finePens.edge.width).toBeCloseTo(2, 0);
  });

  it('takes the fine pen when lines stand close', () => {
    const bars = Array.from({ length: 40 }, (_, i) => box(`bar-${i}`, [10, 10, 900], [i * 25, 0, 0]));
    expect(composePicture(scene(bars), paper, hullDrawing).svg).toContain('stroke-width=".35"');
    expect(composePicture(scene([0, 1].map((i) => box(`bar-${i}`, [30, 10, 900], [i * 200, 0, 0]))), paper, hullDrawing).svg).toContain('stroke-width=".5"');
  });

  it('draws pale bodies in thin grey, the floor thin, the rest in full', () => {
    const bodies = [box('a', [10, 10, 10], [0, 0, 0]), box('b', [10, 10, 10], [20, 0, 0], 'pale'), box('floor', [60, 10, 1], [10, 0, -10], 'present', 'floor')];
    const { svg } = composePicture(scene(bodies), paper, hullDrawing);
    expect(lines(svg, colours.faded, '.25')).toBe(1);
    expect(lines(svg, '#000', '.25')).toBe(1);
    expect(lines(svg, '#000', '.5')).toBe(1);
  });

  it('sets the enlarged ring in the freest corner', () => {
    const corners: readonly (readonly [Vec3, 'left' | 'right', 'top' | 'bottom'])[] = [
      [[350, 0, 250], 'right', 'top'], [[-350, 0, 250], 'left', 'top'], [[-350, 0, -250], 'left', 'bottom'], [[350, 0, -250], 'right', 'bottom'],
    ];
    const quarters = corners.map(([at], i) => box(`quarter-${i}`, [500, 10, 380], at));
    corners.forEach(([, side, end], i) => {
      const bodies = quarters.filter((_, k) => k !== i);
      const mark: Mark = { mark: 'detail', at: [0, 0, 0], radius: 20 };
      const { svg } = composePicture(scene(bodies, [mark]), { width: 150, height: 110 }, hullDrawing);
      const [, x, y, r] = /<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" class="fill-white" fill="#fff"\/>/.exec(svg) ?? [];
      expect([Number(x) > 75 ? 'right' : 'left', Number(y) > 55 ? 'bottom' : 'top']).toEqual([side, end]);
      expect(Number(r)).toBeGreaterThanOrEqual(16);
      expect(Number(r)).toBeLessThanOrEqual(20);
    });
  });

  it('shows the spot in the ring enlarged and tinted, the arrow into it as well', () => {
    const bodies = [box('plate', [800, 10, 20], [0, 0, 0]), box('pin', [16, 10, 16], [300, 0, 40], 'new')];
    const marks: Mark[] = [{ mark: 'detail', at: [300, 0, 20], radius: 40 }, { mark: 'arrow', path: [[300, 0, 50], [300, 0, 12]] }];
    const { svg } = composePicture(scene(bodies, marks), paper, hullDrawing);
    const tints = [...svg.matchAll(new RegExp(`d="M[^"]*" class="fill-fresh" fill="${tint}"`, 'g'))].map(([d]) => d);
    expect(tints).toHaveLength(2);
    expect(width(tints[1] ?? '') / width(tints[0] ?? '')).toBeGreaterThan(3);
  });
});

describe('a part alone', () => {
  it('is drawn at the given scale', () => {
    const { width, height } = composeAlone(box('a', [200, 10, 40], [5, 6, 7]), front, 0.25, hullDrawing);
    expect([width, height]).toEqual([200 * 0.25 + 2, 40 * 0.25 + 2]);
  });

  it('is broken when too long: as wide as allowed, its cross-section at scale, two break lines', () => {
    const { svg, width } = composeAlone(box('a', [2000, 28, 28], [0, 0, 0]), front, 0.2, hullDrawing, 120);
    expect(width).toBeCloseTo(120, 6);
    const outline = /d="([^"]*)"[^>]*stroke-width="\.5"/.exec(svg)?.[1] ?? '';
    expect(outline.match(/M/g)).toHaveLength(2);
    expect(outline).toMatch(/0-5\.6|0 5\.6/);
    const thin = /d="([^"]*)"[^>]*stroke-width="\.25"/.exec(svg)?.[1] ?? '';
    expect(thin.match(/M/g)).toHaveLength(2);
  });

  it('is drawn whole when it fits', () => {
    const { svg } = composeAlone(box('a', [500, 28, 28], [0, 0, 0]), front, 0.2, hullDrawing, 120);
    expect(svg).not.toContain('stroke-width=".25"');
  });
});

function lines(svg: string, colour: string, width: string): number {
  return [...svg.matchAll(/ stroke="([^"]+)" stroke-width="([^"]+)"/g)].filter(([, c, w]) => c === colour && w === width).length;
}

/** Width of a path's first level step. */
function width(path: string): number {
  return Number(/l(-?[\d.]+)/.exec(path)?.[1] ?? 0);
}
