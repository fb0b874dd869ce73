import { describe, expect, it } from 'vitest';
import { buildModel, isMadeInside, type Pattern } from '../../../src/model/index.ts';
import { foldedPanels } from '../../../src/draw/folded-panels.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { faceSign } from '../../../src/draw/flat/marked-face.ts';
import { panelFaces, seenFrom } from '../../../src/draw/flat/folded/faces.ts';
import { flapKinds } from '../../../src/draw/flat/folded/flap-kinds.ts';
import { facesOf, foldedMarks } from '../../../src/draw/flat/folded/folded-stage.ts';
import { punchHeight } from '../../../src/draw/flat/punch-picture.ts';
import { plateMarks } from '../../../src/draw/flat/plate-picture.ts';
import { stageMarks } from '../../../src/draw/flat/marking-picture.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { structureItem, structureNames } from '../../support/structures.ts';
import { itemNamed, modelOf } from '../../support/items.ts';

const models = structureNames.flatMap((name) => structureItem(name).sizes.map(({ name: size }) => ({ name, size, model: buildModel(structureItem(name), size) })));
const patterns: readonly Pattern[] = models.flatMap(({ model }) => foldedPanels(model).map(({ pattern }) => pattern));
const paper = FORMATS.page.bench;
const stages = ['inside', 'creases', 'notches', 'holes', 'notches-cut', 'crease', 'half-cut'] as const;

const bendsOf = ({ flaps }: Pattern) => flaps.flatMap((flap) => [...flap.bends, ...flap.lugs.flatMap(({ bends }) => bends)]);

/** How often the sign is on a drawing: as it lies, and seen through the panel. */
function signsOn(marks: readonly Mark[]): { readonly there: number; readonly behind: number } {
  const all = flat(marks);
  const filled = all.filter((mark) => mark.mark === 'area' && mark.fill === 'ink' && isPennant(mark.rings[0] ?? []));
  const dashes = all.filter((mark) => mark.mark === 'line' && mark.pen.name === 'edge' && isShort(mark.points));
  return { there: filled.length, behind: dashes.length >= faceSign([0, 0], 'behind').length ? 1 : 0 };
}

const flat = (marks: readonly Mark[]): readonly Mark[] => marks.flatMap((mark) => (mark.mark === 'view' || mark.mark === 'placed' ? flat(mark.marks) : [mark]));

/** A pennant on a panel flies to the right of an upright mast. */
function isPennant(ring: readonly (readonly [number, number])[]): boolean {
  const [low, tip, top] = ring;
  if (ring.length !== 3 || low === undefined || tip === undefined || top === undefined) return false;
  return Math.abs(low[0] - top[0]) < 1e-9 && low[1] > top[1] && tip[0] > low[0] && low[1] - top[1] > 2;
}

const isShort = (points: readonly (readonly [number, number])[]): boolean => {
  const [from, to] = points;
  return from !== undefined && to !== undefined && points.length === 2 && Math.hypot(to[0] - from[0], to[1] - from[1]) <= 1.2;
};

describe('the two faces of a panel that is folded', () => {
  it('share its bends: each is drawn on the face that it is made from, and on no other', () => {
    for (const pattern of patterns) {
      const seen = panelFaces.map((face) => bendsOf(seenFrom(pattern, face)));
      expect(seen.flat().every(isMadeInside)).toBe(true);
      expect(seen.flat()).toHaveLength(bendsOf(pattern).length);
    }
  });

  it('share its holes: blind ones on the face that they are punched from, those right through on the marked one', () => {
    for (const pattern of patterns) {
      const [marked, other] = panelFaces.map((face) => seenFrom(pattern, face).holes);
      expect(marked?.every(({ depth, face }) => depth === null || face === 'drawn')).toBe(true);
      expect(other?.every(({ depth, face }) => depth !== null && face === 'drawn')).toBe(true);
      expect((marked?.length ?? 0) + (other?.length ?? 0)).toBe(pattern.holes.length);
    }
  });

  it('are the same panel: turned over twice it lies as before', () => {
    for (const pattern of patterns) {
      const over = seenFrom(pattern, 'other');
      for (const hole of over.holes) expect(pattern.holes.some(({ at }) => Math.hypot(at[0] + hole.at[0], at[1] - hole.at[1]) < 1e-9)).toBe(true);
      expect([over.min[0], over.max[0]]).toEqual([-pattern.max[0], -pattern.min[0]]);
    }
  });

  it('are both worked on where walls stand on a box with its rims turned out: the chest', () => {
    const [chest] = foldedPanels(buildModel(structureItem('chest'), 'standard')).map(({ pattern }) => pattern);
    expect(chest).toBeDefined();
    if (chest === undefined) return;
    expect(stages.map((stage) => [stage, facesOf(chest, stage)])).toEqual([
      ['inside', ['marked']], ['creases', ['marked', 'other']], ['notches', ['marked']], ['holes', []],
      ['notches-cut', ['marked']], ['crease', ['marked', 'other']], ['half-cut', ['other']],
    ]);
  });
});

describe('the sign of the marked face', () => {
  it('is on every drawing of a panel that is folded, dashed where the panel lies turned over', () => {
    for (const pattern of patterns) {
      for (const stage of stages) {
        for (const face of facesOf(pattern, stage)) {
          const { there, behind } = signsOn(foldedMarks(pattern, { stage }, stage === 'holes' ? { ...paper, height: paper.height + punchHeight } : paper, face));
          // Turned over, the signs for the turns show it as well.
          expect([stage, face, there >= 1, behind]).toEqual([stage, face, true, face === 'marked' ? 0 : 1]);
        }
      }
    }
  });

  it('is on every drawing of a panel that is wrapped round four bars', () => {
    for (const name of ['rack', 'chair', 'bed']) {
      const { pattern } = modelOf(itemNamed(name), itemNamed(name).sizes[0]?.name);
      for (const stage of stages) expect([stage, signsOn(stageMarks(pattern, { stage }, paper)).there >= 1]).toEqual([stage, true]);
    }
  });

  it('is on every flat panel, which is drawn from the face that it is worked on', () => {
    const plates = models.flatMap(({ model }) => model.plates.map((plate) => ({ plate, model })));
    expect(plates.length).toBeGreaterThan(3);
    for (const { plate, model } of plates) {
      expect(signsOn(plateMarks(plate, [model.kit.panel.length, model.kit.panel.width], 1, paper)).there).toBe(1);
      expect(plate.marked).toBe(plate.holes.some(({ depth }) => depth !== undefined) ? 'lower' : 'upper');
    }
  });
});

describe('distances of lines on a panel', () => {
  it('count from a line that is there when they are marked: the first one of the marked face, else the blank’s edge', () => {
    for (const pattern of patterns) {
      for (const face of panelFaces) {
        const seen = seenFrom(pattern, face);
        for (const { of, measuredFrom, datum, edge } of flapKinds(seen, face === 'marked')) {
          expect(measuredFrom).toBe(face === 'marked' && of === 'flap' ? 'line' : 'edge');
          if (measuredFrom === 'edge') expect(datum).toBeGreaterThanOrEqual(edge - 1e-9);
        }
      }
    }
  });

  it('count from a line that is seen beside the bar that is laid on, as far from it as the kit tells', () => {
    for (const { model: { kit, patterns: own } } of models) {
      for (const { line } of own.flatMap(({ form, flaps }) => (form === 'wrapped' ? flaps : []))) {
        expect(-line - kit.tube.outsideDiameter / 2).toBeCloseTo(kit.practice.insideGap, 9);
      }
    }
  });

  it('of the chest’s corner tabs count from the sheet’s own edge, not from an edge that is cut later', () => {
    const [chest] = foldedPanels(buildModel(structureItem('chest'), 'standard')).map(({ pattern }) => pattern);
    const lug = chest && flapKinds(seenFrom(chest, 'marked')).find(({ of }) => of === 'lug');
    expect(lug?.datum).toBeCloseTo((chest?.max[0] ?? 0), 6);
    expect(lug?.bends.map(({ at }) => Math.round(2 * ((lug?.datum ?? 0) - at)) / 2).sort((a, b) => a - b)).toEqual([345, 354.5]);
  });
});
