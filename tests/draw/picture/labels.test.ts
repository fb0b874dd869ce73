import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composePicture } from '../../../src/draw/picture/index.ts';
import type { Box } from '../../../src/draw/index.ts';
import type { Mark, Scene } from '../../../src/scene/index.ts';
import { boxOf } from '../../../src/draw/kit/geometry.ts';
import { readPaths } from '../kit/read-paths.ts';
import { anyPaper, anyScene } from './random-scenes.ts';
import { boxMesh, hullDrawing, movedTo } from './stand-in.ts';

const runs = { numRuns: 60, seed: 20240611 };

describe('labels', () => {
  it('never overlap, never leave the picture, never enter a big ring', () => {
    fc.assert(
      fc.property(anyScene, anyPaper, (scene, paper) => {
        const { svg, labels } = composePicture(scene, paper, hullDrawing);
        expect(labels).toHaveLength(scene.marks.filter((mark) => 'text' in mark).length);
        labels.forEach((box, i) => {
          expect(Math.min(box.x, box.y, paper.width - box.x - box.width, paper.height - box.y - box.height)).toBeGreaterThanOrEqual(0);
          labels.slice(i + 1).forEach((other) => expect(overlap(box, other)).toBe(false));
          bigRings(svg).forEach((ring) => expect(distance(box, ring)).toBeGreaterThan(ring.r));
        });
      }),
      runs,
    );
  });

  it('come out the same, byte for byte, the second time', () => {
    fc.assert(
      fc.property(anyScene, anyPaper, (scene, paper) => {
        expect(composePicture(scene, paper, hullDrawing)).toEqual(composePicture(structuredClone(scene), paper, hullDrawing));
      }),
      { ...runs, numRuns: 15 },
    );
  });

  it('keep off new parts and arrows where there is free paper', () => {
    const marks: Mark[] = [{ mark: 'label', at: [0, 0, 50], text: '×1' }, { mark: 'arrow', path: [[0, 0, 500], [0, 0, 60]] }];
    const { svg, labels } = composePicture({ ...oneNewBox(marks), view: { towardsEye: [0, -1, 0], up: [0, 0, 1] } }, { width: 120, height: 90 }, hullDrawing);
    const [label] = labels;
    const tinted = boxOfPath(svg, 'class="fill-fresh"');
    const shaft = boxOfPath(svg, 'stroke="#000" stroke-width="3.5"');
    expect(tinted.width / tinted.height).toBeCloseTo(3, 1);
    expect(shaft.height).toBeGreaterThan(10);
    expect(label && overlap(label, tinted)).toBe(false);
    expect(label && overlap(label, { ...shaft, x: shaft.x - 1.75, width: 3.5 })).toBe(false);
  });

  it('say so when the paper is too small for them', () => {
    const marks = Array.from({ length: 30 }, (_, i): Mark => ({ mark: 'label', at: [i * 10, 0, 0], text: '1000 mm' }));
    expect(() => composePicture(oneNewBox(marks), { width: 40, height: 30 }, hullDrawing)).toThrow(
      'scene box: its 30 marks do not fit on 40 mm × 30 mm without overlapping; give the picture more paper or the scene fewer marks',
    );
  });

  it('are a clear error when there is nothing to draw at all', () => {
    expect(() => composePicture({ ...oneNewBox([]), bodies: [] }, { width: 90, height: 60 }, hullDrawing)).toThrow('scene box: no body or mark to draw');
  });
});

function oneNewBox(marks: readonly Mark[]): Scene {
  return {
    id: 'box',
    bodies: [{ id: 'box', partId: 'box', kind: 'panel', mesh: boxMesh(300, 300, 100), pose: movedTo([0, 0, 0]), look: 'new' }],
    marks,
    view: { towardsEye: [1, -1, 1], up: [0, 0, 1] },
  };
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** The box round the path that has this in its element. */
const boxOfPath = (svg: string, mark: string): Box => boxOf(readPaths(svg).filter(({ element }) => element.includes(mark)).flatMap(({ points }) => points));

interface Ring {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** The white discs of details: no other disc is so large. */
function bigRings(svg: string): Ring[] {
  return [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" class="fill-white" fill="#fff"\/>/g)]
    .map(([, x, y, r]) => ({ x: Number(x), y: Number(y), r: Number(r) }))
    .filter(({ r }) => r > 8);
}

function distance(box: Box, { x, y }: Ring): number {
  return Math.hypot(x - Math.max(box.x, Math.min(x, box.x + box.width)), y - Math.max(box.y, Math.min(y, box.y + box.height)));
}
