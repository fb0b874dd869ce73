import type { z } from 'zod';
import { goodEntries } from '../validate.ts';
import { barSchema, cableSchema, fittingSchema, pointSchema, structurePanelSchema } from './schema.ts';

/** The entries of the sections of a structure that keep to the schema. */
export interface GivenStructure {
  readonly points: ReadonlyMap<string, z.output<typeof pointSchema>>;
  readonly bars: ReadonlyMap<string, z.output<typeof barSchema>>;
  readonly panels: ReadonlyMap<string, z.output<typeof structurePanelSchema>>;
  readonly cables: ReadonlyMap<string, z.output<typeof cableSchema>>;
  readonly fittings: ReadonlyMap<string, z.output<typeof fittingSchema>>;
}

export const givenStructure = (raw: ReadonlyMap<string, unknown>): GivenStructure => ({
  points: goodEntries(raw.get('points'), pointSchema),
  bars: goodEntries(raw.get('bars'), barSchema),
  panels: goodEntries(raw.get('panels'), structurePanelSchema),
  cables: goodEntries(raw.get('cables'), cableSchema),
  fittings: goodEntries(raw.get('fittings'), fittingSchema),
});
