import type { z } from 'zod';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import type { Fault } from './types.ts';
import type { YamlSource } from './yaml-source.ts';

type Issue = z.core.$ZodIssue;

/** The file as its schema gives it, or null and everything that breaks the schema. The schema's messages are the remedies. */
export function validated<Schema extends z.ZodType>(source: YamlSource, schema: Schema): { readonly data: z.output<Schema> | null; readonly faults: readonly Fault[] } {
  const result = schema.safeParse(source.raw);
  return result.success
    ? { data: result.data, faults: [] }
    : { data: null, faults: result.error.issues.flatMap((issue) => issueFaults(source, issue, [])) };
}

function issueFaults(source: YamlSource, issue: Issue, above: readonly PropertyKey[]): Fault[] {
  const path = [...above, ...issue.path];
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = issue.message.split(' ');
      return issue.keys.map((key) => source.faultAtName([...path, key], messages.unknownField(nearestName(key, known), known)));
    }
    case 'invalid_key':
      return [source.faultAtName(path, issue.issues[0]?.message ?? issue.message)];
    case 'invalid_union': {
      const ofRightType = issue.errors.filter((inners) => !inners.some(({ path, code }) => path.length === 0 && (code === 'invalid_type' || code === 'invalid_value')));
      const likeliest = ofRightType.toSorted((a, b) => unknownNames(a) - unknownNames(b) || a.length - b.length)[0];
      return likeliest === undefined
        ? [source.fault(path, issue.message)]
        : likeliest.flatMap((inner) => issueFaults(source, inner, path));
    }
    default:
      return [source.fault(path, issue.message)];
  }
}

/** Names that a form does not have: of several forms, the one that knows the most of what is written is meant. */
function unknownNames(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 0), 0);
}

/** The entries of a section (or nothing, when it is no section) that keep to the schema, each read. */
export function goodEntries<Schema extends z.ZodType>(raw: unknown, schema: Schema): ReadonlyMap<string, z.output<Schema>> {
  return new Map(sectionEntries(raw).flatMap(([name, value]) => {
    const result = schema.safeParse(value);
    return result.success ? [[name, result.data] as const] : [];
  }));
}

/** The entries of a list that keep to the schema, with their places from 0. */
export function goodItems<Schema extends z.ZodType>(raw: unknown, schema: Schema): ReadonlyMap<number, z.output<Schema>> {
  return new Map((Array.isArray(raw) ? raw.slice(0, limits.entries) : []).flatMap((value: unknown, place) => {
    const result = schema.safeParse(value);
    return result.success ? [[place, result.data] as const] : [];
  }));
}

export function sectionEntries(raw: unknown): readonly (readonly [string, unknown])[] {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw) ? Object.entries(raw).slice(0, limits.entries) : [];
}
