import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { cautionOrder, toolOrder } from '../../booklet/index.ts';
import { PART_KINDS } from '../../parts/facts.ts';

const kind = z.enum(PART_KINDS);
const measure = z.object({ value: z.number(), unit: z.string() });

/** What is compared of a `build.json`; builds before pictures were listed have none, nor had all of them a mark. */
const schema = z.object({
  mark: z.string().nullable().default(null),
  item: z.string(),
  size: z.string(),
  parameters: z.record(z.string(), measure),
  dimensions: z.array(z.object({ letter: z.string(), name: z.string(), value: z.number() })),
  parts: z.array(z.object({ kind, count: z.number() })),
  cutLengths: z.array(z.object({ kind, length: z.number(), count: z.number() })),
  cutPlan: z.object({ kerf: z.number(), tubesUsed: z.number(), patterns: z.array(z.looseObject({ count: z.number(), offCut: z.number() })) }),
  flatPattern: z.unknown(),
  steps: z.array(z.object({
    number: z.number(), key: z.string(), times: z.number(), people: z.number(), minutes: z.number(),
    newParts: z.array(z.object({ kind, count: z.number() })), tools: z.array(z.enum(toolOrder)), cautions: z.array(z.enum(cautionOrder)),
  })),
  findings: z.array(z.object({ name: z.string(), verdict: z.enum(['pass', 'caution', 'fail']), figure: z.number(), limit: z.number(), unit: z.string(), margin: z.number() })),
  advice: z.object({ safeLoadPerDeck: z.number().nullable(), loads: z.array(z.object({ load: z.number() })).default([]), wall: z.enum(['masonry', 'timber', 'board']).nullable(), tippingForce: z.number() }),
  pictures: z.array(z.object({ id: z.string(), sha256: z.string() })).default([]),
});

export type BuildRecord = z.infer<typeof schema>;

/** Of data of that form. Throws when it is of another. */
export function asBuildRecord(data: unknown, path: string): BuildRecord {
  const read = schema.safeParse(data);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new Error(`${path}: ${issue?.path.join('.') ?? ''}: not as make writes it; would be right: a build.json of this version, made by foldwright make`);
}

/** The record of an earlier build, or null where there is none. Throws when the file is none of make's. */
export function earlierRecord(path: string): BuildRecord | null {
  const text = textOrNull(path);
  if (text === null) return null;
  try {
    return asBuildRecord(JSON.parse(text), path);
  } catch (error) {
    if (error instanceof SyntaxError) throw new Error(`${path}: no JSON (${error.message}); would be right: a build.json as make writes it`, { cause: error });
    throw error;
  }
}

function textOrNull(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}
