import type { z } from 'zod';
import { goodEntries, sectionEntries } from '../validate.ts';
import { barSchema, cableSchema, fittingSchema, pointSchema, structurePanelSchema } from './schema.ts';

/** The entries of the sections of a structure that keep to the schema. */
export interface GivenStructure {
  readonly points: ReadonlyMap<string, z.output<typeof pointSchema>>;
  readonly bars: ReadonlyMap<string, z.output<typeof barSchema>>;
  readonly panels: ReadonlyMap<string, z.output<typeof structurePanelSchema>>;
  readonly cables: ReadonlyMap<string, z.output<typeof cableSchema>>;
  readonly fittings: ReadonlyMap<string, z.output<typeof fittingSchema>>;
  /** Names of the entries that do not keep to the schema, which is told elsewhere. */
  readonly unread: Readonly<Record<'points' | 'bars' | 'panels' | 'cables' | 'fittings', readonly string[]>>;
}

const SCHEMAS = { points: pointSchema, bars: barSchema, panels: structurePanelSchema, cables: cableSchema, fittings: fittingSchema } as const;

function unreadIn(raw: ReadonlyMap<string, unknown>, section: keyof typeof SCHEMAS): readonly string[] {
  const good = goodEntries(raw.get(section), SCHEMAS[section] as z.ZodType);
  return sectionEntries(raw.get(section)).map(([name]) => name).filter((name) => !good.has(name));
}

export const givenStructure = (raw: ReadonlyMap<string, unknown>): GivenStructure => ({
  points: goodEntries(raw.get('points'), pointSchema),
  bars: goodEntries(raw.get('bars'), barSchema),
  panels: goodEntries(raw.get('panels'), structurePanelSchema),
  cables: goodEntries(raw.get('cables'), cableSchema),
  fittings: goodEntries(raw.get('fittings'), fittingSchema),
  unread: {
    points: unreadIn(raw, 'points'), bars: unreadIn(raw, 'bars'), panels: unreadIn(raw, 'panels'), cables: unreadIn(raw, 'cables'), fittings: unreadIn(raw, 'fittings'),
  },
});
