import { camelKeys } from '../camel.ts';
import { messages } from '../messages.ts';
import type { Fault } from '../types.ts';
import { goodEntries, sectionEntries } from '../validate.ts';
import type { YamlSource } from '../yaml-source.ts';
import { fittingSchema } from './fittings.ts';
import { jointFaults, jointOf, USUAL } from './joints.ts';
import { jointSchema, panelSchema, tubeSchema } from './schema.ts';
import type { Catalogue } from './types.ts';

/** The further kinds of parts that can be read, and what is wrong between their fields. */
export function readCatalogue(source: YamlSource): { readonly catalogue: Catalogue; readonly faults: readonly Fault[] } {
  const raw = new Map(sectionEntries(source.raw));
  const joints = [...goodEntries(raw.get('joints'), jointSchema)];
  const tubes = [...goodEntries(raw.get('tubes'), tubeSchema)];
  const panels = [...goodEntries(raw.get('panels'), panelSchema)];
  const fittings = [...goodEntries(raw.get('fittings'), fittingSchema)];
  const usual = (['tubes', 'panels'] as const).filter((name) => sectionEntries(raw.get(name)).some(([kind]) => kind === USUAL));
  return {
    catalogue: {
      joints: joints.map(([name, given]) => jointOf(name, given)),
      tubes: tubes.map(([name, given]) => ({ name, ...camelKeys(given) })),
      panels: panels.map(([name, given]) => ({ name, ...camelKeys(given) })),
      fittings: fittings.map(([name, given]) => ({ name, ...given })),
    },
    faults: [
      ...joints.flatMap(([name, given]) => jointFaults(source, name, given)),
      ...usual.map((name) => source.faultAtName([name, USUAL], messages.catalogue.usualTaken)),
      ...tubes.filter(([, { wall, outside }]) => 2 * wall >= outside).map(([name]) => source.fault(['tubes', name, 'wall'], messages.kitRule.wall)),
      ...panels.filter(([, { skin, thickness }]) => 2 * skin >= thickness).map(([name]) => source.fault(['panels', name, 'skin'], messages.kitRule.skins)),
    ],
  };
}
