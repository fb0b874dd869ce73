import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Report } from '../../src/check/index.ts';
import type { Model, Pose } from '../../src/model/index.ts';
import { changed, itemNamed, itemNames, modelOf, variants, type ItemName } from './items.ts';
import { rack } from './rack.ts';
import { reportOf } from './finding.ts';

/** Any values of an item's parameters inside their ranges, whole numbers of mm or counts. */
const anyValues = (name: ItemName): fc.Arbitrary<Readonly<Record<string, number>>> =>
  fc.record(Object.fromEntries(itemNamed(name).parameters.map(({ name: parameter, least, most }) =>
    [parameter, fc.integer({ min: Math.ceil(least.value), max: Math.floor(most.value) })])));

const firstSize = (name: ItemName): string => itemNamed(name).sizes[0]?.name ?? '';

describe('any parameters inside their ranges', () => {
  it.each(itemNames)('%s: build and are judged with finite figures, or a finding says what is wrong', (name) => {
    fc.assert(fc.property(anyValues(name), (values) => {
      const { findings, advice } = reportOf(changed(name, firstSize(name), values));
      for (const { figure, limit, margin, verdict, parts, source } of findings) {
        expect([figure, limit, margin].every(Number.isFinite)).toBe(true);
        expect(verdict === 'pass').toBe(margin >= 1);
        expect(parts.length).toBeGreaterThan(0);
        expect(source).not.toBe('');
      }
      if (findings.some(({ verdict }) => verdict === 'fail')) expect(advice.safeLoadPerDeck).toBeNull();
    }), { numRuns: 12 });
  });

  it('a foot-rest over the seat of a stool is told as joints that run into each other or posts that end under them', () => {
    const { findings } = reportOf(changed('stool', 'low', { height: 250, foot_rest: 300 }));
    const failing = findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name);
    expect(failing).toContain('post-reach');
    expect(failing).toContain('joints-apart');
  });

  it('five decks in a rack too low for them is told as joints that run into each other', () => {
    const { findings } = reportOf(changed('rack', 'low', { height: 700, decks: 5, lowest: 400 }));
    expect(findings.find(({ name }) => name === 'joints-apart')).toMatchObject({ verdict: 'fail', unit: 'mm', margin: 0 });
  });
});

describe('an item mirrored left for right', () => {
  const swapped = (text: string): string => text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));
  const swappedIn = <Told>(told: Told): Told => JSON.parse(swapped(JSON.stringify(told))) as Told;
  const turned = (pose: Pose): Pose => pose.map((value, index) => (index % 4 === 0 ? -value : value));

  /** Poses reflected in the plane x = 0, so that every place is mirrored, and left and right exchanged in the names. */
  const mirrored = (model: Model): Model => ({
    ...model,
    parts: model.parts.map((part) => ({ ...part, id: swapped(part.id), place: swappedIn(part.place), pose: turned(part.pose) })),
    joinings: swappedIn(model.joinings),
    plates: model.plates.map((plate) => ({ ...plate, partIds: plate.partIds.map(swapped) })),
  });

  const figures = ({ findings }: Report): readonly unknown[] =>
    findings.map(({ name, verdict, figure, limit }) => [name, verdict, Number(figure.toPrecision(5)), Number(limit.toPrecision(5))]);

  it.each([['chair', 'mark-4'], ['bed', 'toddler'], ['rack', 'standard'], ['stool', 'high']] as const)('%s %s has the same findings', (name, size) => {
    const model = modelOf(name, size);
    expect(figures(reportOf(mirrored(model)))).toEqual(figures(reportOf(model)));
  });

  it('a rack braced on the left is the mirror of one braced on the right', () => {
    const [left, right] = [rack({ faces: ['front', 'back', 'left'] }), rack({ faces: ['front', 'back', 'right'] })];
    expect(figures(reportOf(right))).toEqual(figures(reportOf(left)));
    expect(figures(reportOf(mirrored(left)))).toEqual(figures(reportOf(left)));
  });
});

describe('the items as their files stand', () => {
  it('are stiff enough to stand: enough faces are held and every sway is a figure', () => {
    for (const [name, size] of variants) {
      const { findings } = reportOf(modelOf(name, size));
      expect(findings.find((finding) => finding.name === 'bracing')).toMatchObject({ verdict: 'pass' });
      expect(findings.find((finding) => finding.name === 'sway')).toMatchObject({ verdict: 'pass' });
    }
  });
});
