// A kit whose practice punches by the pattern: all holes while the panel lies flat, none through a folded tab.
import { describe, expect, it } from 'vitest';
import { checkModel } from '../../../src/check/index.ts';
import { fitToScale, onPaper } from '../../../src/draw/kit/fit.ts';
import { signOnPattern } from '../../../src/draw/flat/sign-place.ts';
import { pennant } from '../../../src/draw/flat/marked-face.ts';
import { buildModel, loadSolids } from '../../../src/model/index.ts';
import { planItem } from '../../../src/plan/index.ts';
import { declaredFor } from '../../../src/read/index.ts';
import { changedText } from '../../support/structures.ts';
import { itemFrom, itemNamed, kitText, files } from '../../support/items.ts';

const solids = await loadSolids();
const stool = files.text('steps/stool/item.yaml') ?? '';
const flat = itemFrom(stool, changedText(kitText, 'punching: after-wrapping', 'punching: flat'));
const model = buildModel(flat, 'low');
const stepsOf = (item: typeof flat) => {
  const built = buildModel(item, 'low');
  return planItem(built, item.order, solids, checkModel(built, declaredFor(item, 'low')).advice.wall).steps;
};

describe('a stool whose tabs are punched flat', () => {
  it('has its blind holes in the pattern, and loses no step but those that punch through a folded tab', () => {
    const [before, after] = [stepsOf(flat), stepsOf(itemNamed('stool'))];
    expect(before.filter(({ action }) => action === 'punch-tab')).toEqual([]);
    expect(after.filter(({ action }) => action === 'punch-tab').length).toBeGreaterThan(0);
    expect(before.map(({ key }) => key)).toEqual(after.filter(({ action }) => action !== 'punch-tab').map(({ key }) => key));
  });

  it('takes as long to punch in all: what is spared at the tabs is done on the bench', () => {
    const minutes = (steps: ReturnType<typeof stepsOf>, action: string): number => steps.filter((each) => each.action === action).reduce((sum, each) => sum + each.minutes, 0);
    expect(minutes(stepsOf(flat), 'punch-holes')).toBeGreaterThan(minutes(stepsOf(itemNamed('stool')), 'punch-holes'));
  });

  it.each([0.1, 0.15, 0.2, 0.3])('bears its sign clear of every hole, drawn at %d', (scale) => {
    const { holes, inside, blank } = model.pattern;
    const bounds = { min: [-blank[0] / 2, -blank[1] / 2], max: [blank[0] / 2, blank[1] / 2] } as const;
    const view = fitToScale(bounds, { x: 0, y: 0, width: blank[0] * scale, height: blank[1] * scale });
    const places = signOnPattern(inside, view, 'there', holes).flatMap((mark) => (mark.mark === 'line' ? mark.points : mark.mark === 'area' ? mark.rings.flat() : []));
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(pennant.mast, 6);
    for (const { at } of holes) {
      const [px, py] = onPaper(view, at);
      const far = Math.max(Math.min(...xs) - px, px - Math.max(...xs), Math.min(...ys) - py, py - Math.max(...ys));
      expect(far).toBeGreaterThan(2);
    }
  });
});
