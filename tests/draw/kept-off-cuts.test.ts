import { describe, expect, it } from 'vitest';
import { ownPanels, planTubes } from '../../src/cut/index.ts';
import { markingPicture } from '../../src/draw/flat/marking-picture.ts';
import { keptOf } from '../../src/draw/work-kit/kept-off-cuts.ts';
import { cornersCut } from '../../src/draw/work-kit/index.ts';
import { FORMATS } from '../../src/draw/formats.ts';
import { everySize, itemNamed, modelOf } from '../support/items.ts';
import { planOf, planOnce } from '../support/plans.ts';
import { texts } from './flat/inspect.ts';

describe.each([['bed', 'toddler'], ['chair', 'mark-2']] as const)('off-cuts of the %s %s', (name, size) => {
  it('bear the number of the step that cuts from them, where they are left over', () => {
    const item = itemNamed(name);
    const model = modelOf(item, size);
    const plan = planOnce(model, item.order);
    const stock = model.kit.panel.length * model.kit.panel.width;
    const used = ownPanels(model).flatMap((pieces) => pieces.filter(({ is, index, from }, place) =>
      from.sides[0] * from.sides[1] < stock - 1 && pieces.findIndex((other) => other.is === is && other.index === index) === place));
    const told = ownPanels(model).flat().flatMap(({ is, index }) => Object.values(keptOf(model, plan, is, index))).filter((use) => typeof use === 'number');
    expect(used.length).toBeGreaterThan(0);
    for (const { index } of used) {
      const step = plan.steps.find(({ action, detail }) => action === 'cut-panel' && detail.on === 'plates' && detail.index === index);
      // What is left of the last of several alike is not drawn by itself.
      const followsAlike = ownPanels(model).some((pieces) => pieces.some((piece, place) => piece.is === 'plate' && piece.index === index && place > 1 && pieces[place - 1]?.index === pieces[place - 2]?.index && pieces[place - 1]?.is === pieces[place - 2]?.is));
      if (!followsAlike) expect(told).toContain(step?.number);
    }
  });
});

describe('the picture of a blank on its stock panel', () => {
  const pattern = modelOf(itemNamed('bed'), 'toddler').pattern;

  it('tells the step that uses what is left over, and hatches only waste', () => {
    const drawn = (kept: Parameters<typeof markingPicture>[1]) => markingPicture(pattern, kept);
    const stock = [1500, 1000] as const;
    const plain = drawn({ stage: 'blank', stock });
    const kept = drawn({ stage: 'blank', stock, kept: { right: 32, above: 'waste' } });
    expect(texts(kept).filter((text) => !texts(plain).includes(text))).toEqual(['32']);
    expect(kept.svg.length).toBeLessThan(plain.svg.length);
  });
});

const notched = everySize.filter(({ item, size }) => item.sizes[0]?.name === size && planOf(item, modelOf(item, size).size).steps.some(({ action }) => action === 'cut-notches'));

describe.each(notched)('the corners cut out of the $name', ({ item, size }) => {
  it.each(['page', 'small'] as const)('bear the numbers of the steps that are tried on them, on a %s', async (format) => {
    const model = modelOf(item, size);
    const [plan, cuts] = [planOf(item, model.size), await planTubes(model)];
    const step = plan.steps.find(({ action }) => action === 'cut-notches');
    const tried = (['crease', 'half-cut', 'punch-tab'] as const).flatMap((action) => plan.steps.find((each) => each.action === action)?.number ?? []);
    if (step === undefined || tried.length === 0) throw new Error('nothing is tried');
    const told = (cornersCut({ model, plan, cuts, papers: FORMATS[format] }, step) ?? []).flatMap(texts);
    for (const number of tried) expect(told).toContain(String(number));
  });
});
