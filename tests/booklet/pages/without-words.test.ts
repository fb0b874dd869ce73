import { beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { marginParts } from '../../../src/booklet/pages/margin-parts.ts';
import type { Step } from '../../../src/plan/index.ts';
import { furnitureInput, furniture, type Furniture } from './furniture-booklet.ts';
import { rackInput } from './rack-booklet.ts';

/*
 * What a picture has to tell by itself. Heiser, Phan, Agrawala, Tversky and Hanrahan 2004 (R): every new part visible,
 * the way of attachment visible, actions shown with arrows. Our own rule: each step has the pictograms of its action,
 * tools and people, and its counts; none is told by colour alone.
 */
let inputOf: (name: Furniture | 'rack') => BookletInput;
beforeAll(async () => {
  inputOf = (name) => (name === 'rack' ? rackInput({ edition: 'pictures' }) : furnitureInput(name, { edition: 'pictures' }));
});

const items = ['rack', ...Object.keys(furniture)] as readonly (Furniture | 'rack')[];
const bandsOf = (input: BookletInput): readonly string[] => bookletPages(input).html.split('<article').slice(1);
const bandOf = (bands: readonly string[], { number }: Step): string => bands.filter((band) => new RegExp(`data-picture="step:${number}(:|")`).test(band)).join('');
/** Without its colours, as on a printer that has none. */
const colourless = (svg: string): string => svg.replace(/#[0-9a-fA-F]{3,8}\b/g, '#');

describe.each(items)('the edition without words: %s', (name) => {
  it('tells of every step its action, tools, people and cautions by pictograms', () => {
    const input = inputOf(name);
    const bands = bandsOf(input);
    for (const step of input.plan.steps) {
      const { glyphs } = input;
      const wanted = [glyphs.action(step.action), ...step.tools.map(glyphs.tool), glyphs.plain(step.people === 2 ? 'two-people' : 'one-person'), ...step.cautions.map(glyphs.caution)];
      const band = bandOf(bands, step);
      expect([step.key, wanted.filter(({ svg }) => !band.includes(svg))]).toEqual([step.key, []]);
    }
  });

  it('counts what is done several times and every part that comes in', () => {
    const input = inputOf(name);
    const bands = bandsOf(input);
    for (const step of input.plan.steps) {
      const counts = [...(step.times > 1 ? [step.times] : []), ...marginParts(input, step).flatMap((part) => part.counts.map(({ count }) => count))];
      const band = bandOf(bands, step);
      expect([step.key, counts.filter((count) => !band.includes(`×${count}<`))]).toEqual([step.key, []]);
    }
  });

  it('tells nothing by colour alone', () => {
    const { plan, glyphs } = inputOf(name);
    const signs = new Set(plan.steps.flatMap((step) => [glyphs.action(step.action), ...step.tools.map(glyphs.tool), ...step.cautions.map(glyphs.caution)].map(({ svg }) => svg)));
    expect(new Set([...signs].map(colourless)).size).toBe(signs.size);
  });
});

// The stored plan of the rack has no motions; tests/items tries those of all items.
it.each(Object.keys(furniture) as Furniture[])('a step shows a motion or a tool: %s', (name) => {
  for (const { key, motions, tools, standing } of inputOf(name).plan.steps) {
    expect([key, motions.length > 0 || standing.name === 'bench' || tools.some((tool) => tool !== 'hands')]).toEqual([key, true]);
  }
});
