import { describe, expect, it } from 'vitest';
import { foldedHinge, foldedTab, gapBetween } from '../../src/check/fit/folded-tab.ts';
import type { Flap, Model } from '../../src/model/index.ts';
import { foldSection, patternWrap } from '../../src/model/index.ts';
import type { Kit } from '../../src/read/index.ts';
import { findingOf, namesWith, reportOf } from './finding.ts';
import { rack, stallKit } from './rack.ts';

const practice = (changes: Partial<Kit['practice']>): Kit => ({ ...stallKit, practice: { ...stallKit.practice, ...changes } });

const withFlaps = (model: Model, change: (flap: Flap) => Flap): Model =>
  ({ ...model, pattern: { ...model.pattern, flaps: model.pattern.flaps.map(change) } });

const panels = ['deck-1/panel', 'deck-2/panel', 'deck-3/panel', 'deck-4/panel'];

describe('the standard rack', () => {
  it('fits the stock and folds: nothing fails', () => {
    expect(namesWith(rack(), 'fail')).toEqual([]);
  });
});

describe('stock', () => {
  it('names the panels when the blank is larger than the panel, and the side that is too long', () => {
    const finding = findingOf(rack({ width: 1300 }), 'stock-panel');
    expect(finding).toMatchObject({ verdict: 'fail', limit: 1500, parts: panels });
    expect(finding.figure).toBeGreaterThan(1500);
    expect(namesWith(rack({ width: 1300 }), 'fail')).toContain('stock-panel');
  });

  it('lays the blank the other way round where only that fits', () => {
    const kit: Kit = { ...stallKit, panel: { ...stallKit.panel, length: 1000, width: 1500 } };
    expect(findingOf(rack({ kit }), 'stock-panel').margin).toBe(findingOf(rack(), 'stock-panel').margin);
  });

  it('names the posts, and only them, when they are longer than the tube', () => {
    const failing = reportOf(rack({ height: 2001 })).findings.filter((finding) => finding.name === 'stock-tube' && finding.verdict === 'fail');
    expect(failing.map((finding) => finding.parts)).toEqual([['post-left-front', 'post-right-front', 'post-left-back', 'post-right-back']]);
  });

  it('a post exactly as long as the tube passes', () => {
    const [posts] = reportOf(rack({ height: 2000 })).findings.filter((finding) => finding.name === 'stock-tube');
    expect(posts).toMatchObject({ verdict: 'pass', margin: 1, figure: 2000 });
  });

  it('names the two longest cables when the cable is too short for them', () => {
    const kit: Kit = { ...stallKit, cable: { ...stallKit.cable, length: 1500 } };
    expect(findingOf(rack({ kit }), 'stock-cable')).toMatchObject({ verdict: 'fail', parts: ['cable-back-1', 'cable-back-2'] });
  });
});

describe('folding', () => {
  it('a crease sharper than the panel bears fails in rad and names the panels', () => {
    const sharp = withFlaps(rack(), (flap) => ({ ...flap, creaseAngle: Math.PI / 3 }));
    expect(findingOf(sharp, 'crease-angle')).toMatchObject({ verdict: 'fail', unit: 'rad', margin: 0.75, parts: panels });
  });

  it('a tab too short for its pin line and head fails; one just long enough passes', () => {
    expect(findingOf(rack({ kit: practice({ tab: 22.9 }) }), 'tab-pins').verdict).toBe('fail');
    expect(findingOf(rack({ kit: practice({ tab: 23 }) }), 'tab-pins')).toMatchObject({ verdict: 'pass', margin: 1 });
  });

  it('a pin head over the snip of the tab fails', () => {
    const snipped = withFlaps(rack(), (flap) => ({ ...flap, corner: 35 }));
    expect(findingOf(snipped, 'tab-edge').verdict).toBe('fail');
    expect(findingOf(snipped, 'tab-edge').figure).toBeCloseTo((25 + 15 - 35) / Math.SQRT2, 3);
  });

  it('a pin that would prick through the outer skin fails and names the pins', () => {
    const kit: Kit = { ...stallKit, panelPin: { ...stallKit.panelPin, length: 17.3 } };
    const finding = findingOf(rack({ kit }), 'pin-length');
    expect(finding.verdict).toBe('fail');
    expect(finding.parts.every((id) => id.includes('panel-pin'))).toBe(true);
  });

  it('pins of neighbouring sides that meet at the corner fail and both are named', () => {
    const kit = { ...practice({ pinEnd: 12, tab: 70 }), panelPin: { ...stallKit.panelPin, headDiameter: 24 } };
    const finding = findingOf(rack({ kit }), 'pins-apart');
    expect(finding.verdict).toBe('fail');
    expect(finding.parts).toContain('deck-1/panel-pin-left-1');
    expect(finding.parts).toContain('deck-1/panel-pin-front-1');
  });

  it('only the two pins of one side that stand too close are named', () => {
    const model = rack();
    const moved = model.parts.map((part) => {
      if (part.id !== 'deck-2/panel-pin-front-3') return part;
      const beside = model.parts.find((other) => other.id === 'deck-2/panel-pin-front-1');
      return { ...part, pose: (beside ?? part).pose.map((value, index) => (index === 12 ? value + 10 : value)) };
    });
    expect(findingOf({ ...model, parts: moved }, 'pins-apart')).toMatchObject({
      verdict: 'fail', figure: 10, limit: 16, parts: ['deck-2/panel-pin-front-1', 'deck-2/panel-pin-front-3'],
    });
  });

  it('tabs whose corners are not snipped run into each other; the overlap is told', () => {
    const square = withFlaps(rack(), (flap) => ({ ...flap, corner: 0 }));
    const finding = findingOf(square, 'tabs-apart');
    expect(finding).toMatchObject({ verdict: 'fail', parts: panels });
    expect(finding.figure).toBeCloseTo(-(38.734 + 45 - 74), 2);
  });

  it('opposite tabs that meet in the middle fail', () => {
    const long = withFlaps(rack({ depth: 300 }), (flap) => ({ ...flap, edge: flap.halfCut + 140 }));
    expect(findingOf(long, 'opposite-tabs').verdict).toBe('fail');
  });
});

describe('the folded tab', () => {
  const { pattern } = rack();
  const [flap] = pattern.flaps;
  if (!flap) throw new Error('the pattern has no flap');

  it('has its hinge where the folded cross-section walks to', () => {
    const section = foldSection(patternWrap(pattern, flap), 1, -pattern.axes[0]);
    expect(-section.tab.hinge[0]).toBeCloseTo(foldedHinge(pattern, flap.turnBack), 6);
    expect(section.tab.hinge[1]).toBeCloseTo(pattern.thickness, 6);
  });

  it('covers every pin hole of its side in the middle part', () => {
    for (const each of pattern.flaps) {
      const tab = foldedTab(pattern, each);
      for (const hole of pattern.holes.filter((one) => one.in === 'base' && one.side === each.side)) {
        expect(gapBetween(tab, [hole.at])).toBeLessThan(0);
      }
    }
  });

  it('lies clear of a copy of itself moved aside by the gap it is moved', () => {
    const tab = foldedTab(pattern, flap);
    const width = Math.max(...tab.map(([x]) => x)) - Math.min(...tab.map(([x]) => x));
    expect(gapBetween(tab, tab.map(([x, y]) => [x + width + 7, y] as const))).toBeCloseTo(7, 9);
  });
});
