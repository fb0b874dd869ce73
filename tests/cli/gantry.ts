import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { newWorkshop, type Workshop } from './workshop.ts';

export const GANTRY = 'steps/gantry/item.yaml';

/**
 * A workshop that has one item more: the smallest that stands. A third of the work of a stool is enough to ask what a
 * command does with whatever item it makes.
 */
export function workshopWithGantry(): Workshop {
  const shop = newWorkshop();
  mkdirSync(join(shop.folder, 'steps/gantry'));
  shop.write(GANTRY, readFileSync(new URL('gantry.yaml', import.meta.url), 'utf8'));
  for (const [path, words] of Object.entries(WORDS)) {
    for (const full of shop.files().filter((each) => each.startsWith('locales/') && each.endsWith(`/${path}`))) {
      shop.write(full, JSON.stringify({ ...JSON.parse(shop.read(full).toString()) as Readonly<Record<string, unknown>>, gantry: words }));
    }
  }
  return shop;
}

/** What each language has of it, in the same words: nobody reads them. */
const WORDS = {
  'items.json': { name: 'Gantry', sizes: { low: 'Low', standard: 'Standard', high: 'High' } },
  'parameters.json': {
    width: { label: 'Width', purpose: 'Length of the rail.' },
    height: { label: 'Height', purpose: 'From the floor to the middle of the rail.' },
    foot: { label: 'Feet', purpose: 'Length of the two feet.' },
  },
};
