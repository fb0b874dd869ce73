import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../../src/draw/lines/index.ts';
import type { Vec2 } from '../../../src/model/index.ts';
import { firstBody, raysOf } from './rays.ts';
import { testRack } from './testRack.ts';
import { fromFront, isInside, isometric, scatteredViews, towards } from './views.ts';

const rack = testRack(1, 24);

describe('regions against ray casting', () => {
  it.each([isometric, towards(1, 1, -1), fromFront, towards(0, 0, 1), ...scatteredViews(4)].map((view) => [view.towardsEye.map((v) => v.toFixed(2)).join(' '), view] as const))(
    'from %s: each place is filled by the body nearest to the eye',
    (_, view) => {
      const rays = raysOf(rack, view);
      const { regions, bounds: { min, max } } = lineDrawing(rack, view);
      const steps = 60;
      const places = Array.from({ length: steps * steps }, (_unused, k): Vec2 => [
        min[0] + (max[0] - min[0]) * ((Math.floor(k / steps) + 0.4137) / steps),
        min[1] + (max[1] - min[1]) * (((k % steps) + 0.5913) / steps),
      ]);
      const covered = places.filter((place) => firstBody(rays, place) >= 0);
      expect(covered.length).toBeGreaterThan(250);
      const wrong = places.filter((place) => {
        const filled = regions.filter((region) => isInside(region.rings, place)).map((region) => region.body);
        const first = rack[firstBody(rays, place)];
        return filled.join() !== (first?.id ?? '');
      });
      expect(wrong).toEqual([]);
    },
  );
});
