import { z } from 'zod';
import { itemSchema } from './item-schema.ts';
import { kitSchema } from './kit-schema.ts';
import { stockSchema } from './stock-schema.ts';
import { pieceFileSchema } from './structure/schema.ts';

/**
 * The JSON Schemas (draft 2020-12) that editors use for completion and first checks, by path in the repository.
 * They are made from the same schemas the reader checks with; units, names and values are checked further when read.
 */
export function publishedSchemas(): Record<string, string> {
  return {
    'steps/schemas/item.schema.json': schemaText(itemSchema, 'Item file'),
    'steps/schemas/kit.schema.json': schemaText(kitSchema, 'Kit file'),
    'steps/schemas/piece.schema.json': schemaText(pieceFileSchema, 'File of a piece'),
    'steps/schemas/stock.schema.json': schemaText(stockSchema, 'Stock file'),
  };
}

function schemaText(schema: z.ZodType, title: string): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', target: 'draft-2020-12' });
  return `${JSON.stringify({ $schema, title, ...rest }, null, 2)}\n`;
}
