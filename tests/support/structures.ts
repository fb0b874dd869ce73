import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { filesInMemory, filesOnDisk, readItem, type Item } from '../../src/read/index.ts';
import { itemNamed } from './items.ts';

const disk = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));
const kitFile = 'steps/kits/stall-kit.yaml';

export const structureNames = ['bench', 'screen', 'chest', 'leaning-chair', 'trolley', 'two-bay'] as const;
export type StructureName = (typeof structureNames)[number];

export const structureFile = (name: string): string => `steps/${name}/item.yaml`;

/** The text of an item of points and bars that stands beside the tests of the model. */
export const structureText = (name: StructureName): string =>
  readFileSync(new URL(`../../steps/${name}/item.yaml`, import.meta.url), 'utf8');

/** An item of points and bars, read from a text, with the demo kit and other files as given. */
export const structureFrom = (name: string, text: string, others: Readonly<Record<string, string>> = {}): Item =>
  readItem(filesInMemory({ [structureFile(name)]: text, [kitFile]: disk.text(kitFile) ?? '', ...others }), structureFile(name));

/** An item of points and bars as its file stands. */
export const structureItem = (name: StructureName): Item => itemNamed(name);

/** The text with one passage changed; it must be there just once. */
export function changedText(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2) throw new Error(`"${from}" must occur once`);
  return text.replace(from, () => to);
}
