import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { filesOnDisk, listItems, publishedSchemas } from '../../src/read/index.ts';
import { changed, itemFile, kitFile, sample, standFile } from './samples.ts';

const stored = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));

/** A second reading of the published text, by zod's own importer of JSON Schema. */
function published(path: string): z.ZodType {
  return z.fromJSONSchema(JSON.parse(publishedSchemas()[path] ?? ''));
}

describe('the published schemas', () => {
  it.each(Object.entries(publishedSchemas()))('%s is stored as the reader has it', (path, text) => {
    expect(stored.text(path)).toBe(text);
  });

  it('are JSON Schema draft 2020-12 with a description at every field of the kit', () => {
    const kit = JSON.parse(publishedSchemas()['steps/schemas/kit.schema.json'] ?? '');
    expect(kit.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    for (const name of ['panel', 'tube', 'joint', 'panel-pin', 'joint-pin', 'cable', 'practice']) {
      const fields: { description?: string }[] = Object.values(kit.properties[name].properties);
      expect(fields.length).toBeGreaterThan(3);
      for (const field of fields) expect(field.description).toMatch(/\.$/);
    }
  });

  it('accept the good files and refuse a number without its unit', () => {
    expect(published('steps/schemas/kit.schema.json').safeParse(parse(sample(kitFile))).success).toBe(true);
    for (const file of [itemFile, standFile]) expect(published('steps/schemas/item.schema.json').safeParse(parse(sample(file))).success).toBe(true);
    const bare = parse(sample(kitFile).replace('wall: 2.5 mm', 'wall: 2.5'));
    expect(published('steps/schemas/kit.schema.json').safeParse(bare).success).toBe(false);
  });

  it.each([
    ['use: seat', 'use: rack'],
    ['sides: [back]', 'sides: [top]'],
    ['on: back', 'on: [back, top]'],
    ['is: panel\n    on: back', 'is: panle\n    on: back'],
    ['    from: foot-frame\n', ''],
    ['brace: foot-frame', 'brase: foot-frame'],
    ['through: [seat, foot-frame, back-rail, ring]', 'through: 3'],
  ])('refuse %j → %j', (from, to) => {
    expect(published('steps/schemas/item.schema.json').safeParse(parse(changed(standFile, from, to))).success).toBe(false);
  });

  it.each(listItems(stored))('are named on the first line of %s and accept it', (path) => {
    expect(stored.text(path)).toMatch(/^# yaml-language-server: \$schema=\.\.\/schemas\/item\.schema\.json\n/);
    expect(published('steps/schemas/item.schema.json').safeParse(parse(stored.text(path) ?? '')).success).toBe(true);
  });

  it('are named on the first line of the kit file', () => {
    expect(stored.text('steps/kits/stall-kit.yaml')).toMatch(/^# yaml-language-server: \$schema=\.\.\/schemas\/kit\.schema\.json\n/);
  });
});
