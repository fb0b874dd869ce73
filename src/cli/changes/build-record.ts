import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { cautionOrder, toolOrder } from '../../booklet/index.ts';
import { PART_KINDS } from '../../parts/facts.ts';
import { namedSection } from '../../read/index.ts';

/** Far above anything that is built, ours: figures in the units of the record, lengths in mm. */
const figure = z.number().min(-1e12).max(1e12);
const length = z.number().min(0).max(1e6);
const count = z.int().min(0).max(1e6);
const text = z.string().max(500);
const listOf = <Entry extends z.ZodType>(entry: Entry) => z.array(entry).max(100_000);

const kind = z.enum(PART_KINDS);
const measure = z.object({ value: figure, unit: text });

/** What is compared of a `build.json`; builds before pictures were listed have none, nor had all of them a mark. */
export const buildSchema = z.object({
  mark: text.nullable().default(null),
  item: text,
  size: text,
  parameters: namedSection(text, measure, 'Parameters.'),
  dimensions: listOf(z.object({ letter: text, name: text, value: length })),
  parts: listOf(z.object({ kind, count })),
  cutLengths: listOf(z.object({ kind, length, count })),
  cutPlan: z.object({ kerf: length, tubesUsed: count, patterns: listOf(z.looseObject({ count, offCut: length })) }),
  flatPattern: z.unknown(),
  steps: listOf(z.object({
    number: count, key: text, times: count, people: count, minutes: z.number().min(0).max(1e6),
    newParts: listOf(z.object({ kind, count })), tools: listOf(z.enum(toolOrder)), cautions: listOf(z.enum(cautionOrder)),
  })),
  findings: listOf(z.object({ name: text, verdict: z.enum(['pass', 'caution', 'fail']), figure, limit: figure, unit: text, margin: figure })),
  advice: z.object({ safeLoadPerDeck: figure.nullable(), loads: listOf(z.object({ load: figure })).default([]), wall: z.enum(['masonry', 'timber', 'board']).nullable(), tippingForce: figure }),
  pictures: listOf(z.object({ id: text, sha256: text })).default([]),
});

export type BuildRecord = z.infer<typeof buildSchema>;

/** Of data of that form. Throws when it is of another. */
export function asBuildRecord(data: unknown, path: string): BuildRecord {
  const read = buildSchema.safeParse(data);
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
