import { z } from 'zod';
import { unitsFor } from '../../src/read/units.ts';

/** A node of a schema, the way to it as a file would write it: `sizes.*.*`, `connections.*.to`. */
export interface Leaf {
  readonly path: string;
  readonly schema: z.core.$ZodType;
}

/** Every schema inside a schema, itself first. A list's entries and a section's free names are `*`, those names themselves `(name)`. */
export function leavesOf(schema: z.core.$ZodType, path = ''): readonly Leaf[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  const within = (inner: z.core.$ZodType, step?: string): readonly Leaf[] => leavesOf(inner, step === undefined ? path : path === '' ? step : `${path}.${step}`);
  const inside = (): readonly Leaf[] => {
    switch (def.type) {
      case 'object': return [...Object.entries(def.shape).flatMap(([name, inner]) => within(inner, name)), ...(def.catchall === undefined || isShut(def.catchall) ? [] : within(def.catchall, '*'))];
      case 'record': return [...within(def.keyType, '(name)'), ...within(def.valueType, '*')];
      case 'array': return within(def.element, '*');
      case 'tuple': return def.items.flatMap((inner, place) => within(inner, String(place)));
      case 'union': return def.options.flatMap((inner) => within(inner));
      case 'optional': case 'nullable': case 'default': return within(def.innerType);
      case 'pipe': return within(def.in);
      case 'string': case 'number': case 'boolean': case 'enum': case 'literal': case 'unknown': case 'transform': return [];
      default: throw new Error(`${path}: a schema of a kind that nobody walks: ${def.type}`);
    }
  };
  return [{ path, schema }, ...inside()];
}

const isShut = (schema: z.core.$ZodType): boolean => (schema as z.core.$ZodTypes)._zod.def.type === 'never';

/** A bound beyond this is none: a whole number that a machine can just hold says nothing of an item. */
const MOST = 1e12;

/** What a node leaves open, in words; null where it is bounded. */
export function openEnd({ schema }: Leaf): string | null {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum, maxLength, maxItems, maxProperties } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  const isBound = (...values: readonly unknown[]): boolean => values.some((value) => typeof value === 'number' && Math.abs(value) <= MOST);
  switch (def.type) {
    case 'number': return isBound(minimum, exclusiveMinimum) && isBound(maximum, exclusiveMaximum) ? null : 'a number without least and most';
    case 'string': return isBound(maxLength) ? null : 'a text of any length';
    case 'array': return isBound(maxItems) ? null : 'a list of any length';
    case 'record': return isBound(maxProperties) ? null : 'a section of any length';
    // Of a section that is not strict the reader leaves out what it does not know.
    case 'object': return def.catchall === undefined || isShut(def.catchall) ? null : 'a section of any fields';
    case 'unknown': return 'anything';
    case 'pipe': return measuresTaken(schema as z.ZodType);
    default: return null;
  }
}

/** Figures no item has, with every unit: a text that is read as a measure must not let one through. */
function measuresTaken(schema: z.ZodType): string | null {
  const units = (['length', 'angle', 'force', 'mass', 'area', 'stress', 'density'] as const).flatMap(unitsFor);
  const taken = units.flatMap((unit) => ['1e300', '-1e300', '1e999', '1e15', '1e-15'].map((figure) => `${figure} ${unit}`)).find((text) => schema.safeParse(text).success);
  return taken === undefined ? null : `takes ${taken}`;
}
