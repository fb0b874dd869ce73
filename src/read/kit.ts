import { camelKeys } from './camel.ts';
import { readCatalogue } from './catalogue/read-catalogue.ts';
import { FaultError } from './faults.ts';
import { kitRuleFaults } from './kit-rules.ts';
import { kitSchema } from './kit-schema.ts';
import { messages } from './messages.ts';
import type { Fault, Kit } from './types.ts';
import { validated } from './validate.ts';
import { yamlSource } from './yaml-source.ts';

/**
 * Reads one kit file. `file` is its path, for the messages and to compare its name with.
 * Throws a FaultError with every fault of the file.
 */
export function kitFromText(text: string, file: string): Kit {
  const { kit, faults } = kitOrFaults(text, file);
  if (kit === null) throw new FaultError(faults);
  return kit;
}

/** The kit, or null and all faults of its file. */
export function kitOrFaults(text: string, file: string): { readonly kit: Kit | null; readonly faults: readonly Fault[] } {
  const source = yamlSource(file, text);
  if (source.faults.length > 0) return { kit: null, faults: source.faults };
  const { data, faults: broken } = validated(source, kitSchema);
  const { catalogue, faults: odd } = readCatalogue(source);
  const faults = [...broken, ...kitRuleFaults(source), ...odd];
  const called = file.split('/').at(-1)?.replace(/\.yaml$/, '') ?? '';
  if (data !== null && data.name !== called) faults.push(source.fault(['name'], messages.nameLike(called)));
  if (data === null || faults.length > 0) return { kit: null, faults };
  const { name, panel, tube, joint, 'panel-pin': panelPin, 'joint-pin': jointPin, cable, practice } = data;
  const { contents, 'joint-test': jointTest, caps, 'local-limits': local } = data;
  const optional = { ...(jointTest && { jointTest }), ...(caps && { caps: camelKeys(caps) }), ...(local && { localLimits: camelKeys(local) }), ...(contents && { contents: camelKeys(contents) }) };
  return { kit: { name, ...camelKeys({ panel, tube, joint, panelPin, jointPin, cable, practice }), catalogue, ...optional }, faults };
}
