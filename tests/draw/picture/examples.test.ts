import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../../src/draw/lines/index.ts';
import { composeAlone, composeDone, composePicture, type LineDrawer } from '../../../src/draw/picture/index.ts';
import { colours } from '../../../src/draw/kit/colours.ts';
import { allScenes, closeFrame, isometric, longTube, paleReminder, pinSide } from './example-scenes.ts';
import { hullDrawing } from './stand-in.ts';

const hiddenLinesRemoved: LineDrawer = (bodies, view) => lineDrawing(bodies, view);
const papers = [{ width: 150, height: 105 }, { width: 90, height: 70 }];

describe('example scenes with hidden lines removed', () => {
  it.each(allScenes.flatMap((make) => papers.map((paper) => [make.name, paper.width, make, paper] as const)))('%s on %d mm', (_, __, make, paper) => {
    const scene = make();
    const picture = composePicture(scene, paper, hiddenLinesRemoved);
    expect(picture.svg).toContain(`fill="${colours.fresh}"`);
    expect(picture.svg).not.toMatch(/NaN|Infinity|undefined|\d\.\d{3}/);
    expect(picture.svg.length).toBeLessThan(40_000);
    expect(picture.labels).toHaveLength(scene.marks.filter((mark) => 'told' in mark).length);
    const fresh = scene.bodies.filter((body) => body.look === 'new').map((body) => body.id);
    expect(Object.keys(picture.newPartShares).sort()).toEqual(fresh.sort());
    // The least visible share of a new part: 15 % (own default, no source).
    Object.values(picture.newPartShares).forEach((share) => expect(share).toBeGreaterThan(0.15));
    expect(composePicture(make(), paper, hiddenLinesRemoved).svg).toBe(picture.svg);
  });

  it('break a 2 m tube at 1 : 5 to the width of a column', () => {
    const { width, svg } = composeAlone(longTube, isometric, 0.2, hiddenLinesRemoved, 120);
    expect(width).toBeCloseTo(120, 6);
    expect(svg).toContain('stroke-width=".25"');
  });
});

describe('what a step has made', () => {
  it.each([{ width: 150, height: 84 }, { width: 150, height: 40 }])('has its tick close before it on %o', (paper) => {
    const { svg, width } = composeDone({ ...pinSide(), marks: [] }, paper, hullDrawing);
    const [drawing, sign] = svg.split('</g>');
    const places = [...(drawing ?? '').matchAll(/M(\d+(?:\.\d+)?) (?!0l)/g)].map(([, x]) => Number(x));
    const [moved, tick] = [Number(/translate\(([\d.]+)/.exec(drawing ?? '')?.[1]), Number(/M([\d.]+)/.exec(sign ?? '')?.[1])];
    expect(width).toBe(paper.width);
    expect(moved + Math.min(...places) - tick).toBeGreaterThan(5);
    expect(moved + Math.min(...places) - tick).toBeLessThan(30);
  });
});

/** Stored pictures to look at; made again with `npx vitest run tests/draw/picture -u`. */
describe('stored pictures', () => {
  it.each([closeFrame, pinSide, paleReminder])('%o', async (make) => {
    const scene = make();
    await expect(composePicture(scene, { width: 110, height: 80 }, hullDrawing).svg).toMatchFileSnapshot(`stored/${scene.id}.svg`);
  });
});
