import { Matrix4, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { lineDrawing, newLineCaches } from '../../../src/draw/lines/index.ts';
import type { LineDrawing } from '../../../src/draw/types.ts';
import type { View } from '../../../src/scene/index.ts';
import { grown, moved } from './solids.ts';
import { testRack } from './testRack.ts';
import { drawnLength, isometric, ringsArea, towards } from './views.ts';

const rack = testRack(1, 16);
const view = towards(0.7, -1, 0.6);

/** Relative differences in the length of each weight, and the greatest difference of a visible share. */
function differences(one: LineDrawing, other: LineDrawing, scale = 1): { readonly lengths: number; readonly shares: number } {
  const lengths = (['outline', 'edge'] as const).map((weight) => Math.abs(drawnLength(other, weight) / scale / drawnLength(one, weight) - 1));
  const shares = rack.map(({ id }) => Math.abs(one.visibleShare(id) - other.visibleShare(id)));
  return { lengths: Math.max(...lengths), shares: Math.max(...shares) };
}

/** All that a drawing of the rack tells. */
const allOf = (drawing: LineDrawing): string => JSON.stringify([drawing, rack.map(({ id }) => drawing.visibleShare(id))]);

const close = { lengths: expect.closeTo(0, 2.5), shares: expect.closeTo(0, 2) } as unknown;

describe('the same scene', () => {
  const drawing = lineDrawing(rack, view);

  it('gives the same bytes again, with and without a cache', () => {
    const caches = newLineCaches();
    const again = [lineDrawing(rack, view), lineDrawing(rack, view, { caches }), lineDrawing(rack, view, { caches })];
    for (const other of again) expect(allOf(other)).toBe(allOf(drawing));
  });

  it('keeps no number of another view or step in the cache', () => {
    const caches = newLineCaches();
    lineDrawing(rack, isometric, { caches });
    lineDrawing(rack.slice(3), view, { caches });
    expect(allOf(lineDrawing(rack, view, { caches }))).toBe(allOf(drawing));
  });

  it('looks the same when the direction to the eye is longer', () => {
    expect(allOf(lineDrawing(rack, { ...view, towardsEye: [7, -10, 6] }))).toBe(allOf(drawing));
  });

  it.each([0.3, 1.1, 2.5])('turned by %f rad about the view axis: same lengths and shares', (angle) => {
    const eye = new Vector3(...view.towardsEye).normalize();
    const turned: View = { towardsEye: view.towardsEye, up: new Vector3(...view.up).applyAxisAngle(eye, angle).toArray() };
    expect(differences(drawing, lineDrawing(rack, turned))).toEqual(close);
  });

  it('turned as a whole together with the view: same lengths and shares', () => {
    const turn = new Matrix4().makeRotationAxis(new Vector3(1, 2, 3).normalize(), 0.8);
    const apply = (v: View['up']) => new Vector3(...v).transformDirection(turn).toArray();
    const other = lineDrawing(rack.map((one) => moved(one, turn)), { towardsEye: apply(view.towardsEye), up: apply(view.up) });
    expect(differences(drawing, other)).toEqual(close);
  });

  it.each([0.01, 3.7, 1000])('grown %f times: lengths grow as much, shares stay', (factor) => {
    const other = lineDrawing(rack.map((one) => grown(one, factor)), view);
    expect(differences(drawing, other, factor)).toEqual(close);
  });

  it('named in another order: same lengths and shares', () => {
    expect(differences(drawing, lineDrawing([...rack].reverse(), view))).toEqual(close);
  });

  it('covers as much with all regions together as it does as one', () => {
    const covered = drawing.regions.reduce((sum, region) => sum + ringsArea(region.rings), 0);
    const shadow = lineDrawing(rack, { ...view, towardsEye: [-0.7, 1, -0.6] }).regions.reduce((sum, region) => sum + ringsArea(region.rings), 0);
    expect(shadow / covered).toBeCloseTo(1, 3);
  });
});
