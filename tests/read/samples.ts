import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { filesInMemory, filesOnDisk, readItem } from '../../src/read/index.ts';
import { faultsOf } from '../support/faults.ts';
import type { Item } from '../../src/read/index.ts';

export const itemFile = 'steps/shelf/item.yaml';
export const standFile = 'steps/stand/item.yaml';
export const kitFile = 'steps/kits/small-kit.yaml';

const stored = filesOnDisk(fileURLToPath(new URL('./files', import.meta.url)));

/** The text of a stored sample with one passage changed; the passage must be there exactly once. */
export function changed(file: string, from: string, to: string): string {
  const text = stored.text(file) ?? '';
  if (text.split(from).length !== 2) throw new Error(`"${from}" must occur once in ${file}`);
  return text.replace(from, () => to);
}

export function sample(file: string): string {
  return stored.text(file) ?? '';
}

/** Reads a sample item (the shelf unless told), with texts of some files replaced. */
export function readSample(texts: Readonly<Record<string, string>> = {}, file = itemFile): Item {
  return readItem(filesInMemory({ [file]: sample(file), [kitFile]: sample(kitFile), ...texts }), file);
}

/** What stands in the good file, what stands there instead, and the faults: place, field, what was found, part of the remedy. */
export type Case = readonly [from: string, to: string, ...faults: readonly (readonly [place: string, field: string, found: string, remedy: string])[]];

/** Changes one passage of a sample (read with `item`) and expects just the faults of the case. */
export function expectFaults(file: string, [from, to, ...expected]: Case, item = itemFile): void {
  const faults = faultsOf(() => readSample({ [file]: changed(file, from, to) }, item));
  expect(faults.map(({ position, field, found }) => [position.file, `${position.line}:${position.column}`, field, found]))
    .toEqual(expected.map(([place, field, found]) => [file, place, field, found]));
  expected.forEach(([, , , remedy], place) => expect(faults[place]?.remedy).toContain(remedy));
}
