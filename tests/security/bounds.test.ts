import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { itemSchema } from '../../src/read/item-schema.ts';
import { kitSchema } from '../../src/read/kit-schema.ts';
import { stockSchema } from '../../src/read/stock-schema.ts';
import { pieceFileSchema } from '../../src/read/structure/schema.ts';
import { leavesOf, openEnd } from './schema-leaves.ts';

/** Every schema that something from outside is read by. */
const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  'an item file': itemSchema,
  'a kit file': kitSchema,
  'a stock file': stockSchema,
  'the file of a piece': pieceFileSchema,
};

const openEnds = (schema: z.ZodType): readonly string[] => leavesOf(schema).flatMap((leaf) => {
  const open = openEnd(leaf);
  return open === null ? [] : [`${leaf.path}: ${open}`];
});

describe('every number, text, list and section', () => {
  it.each(Object.entries(SCHEMAS))('of %s has a bound', (_, schema) => {
    expect(leavesOf(schema).length).toBeGreaterThan(5);
    expect(openEnds(schema)).toEqual([]);
  });
});
