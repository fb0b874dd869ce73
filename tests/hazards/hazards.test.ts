import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkModel, type Report } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { FaultError, declaredFor, filesInMemory, readItem } from '../../src/read/index.ts';
import { WORK } from '../../src/work/facts.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { once } from '../support/once.ts';
import { planOnce } from '../support/plans.ts';
import { hazards, type Hazard, type Swap } from './hazards.ts';

const root = new URL('../../', import.meta.url);
const own = ['open-front-bed'];
const fileOf = (item: string): string => (own.includes(item) ? `tests/hazards/items/${item}.yaml` : `steps/${item}/item.yaml`);
const textOf = (path: string): string => readFileSync(new URL(path, root), 'utf8');

/** The text with each swap made; a swap that finds nothing would test nothing. */
function swapped(text: string, swaps: readonly Swap[]): string {
  return swaps.reduce((changed, [from, to]) => {
    const found = changed.includes(from) ? from : new RegExp(from).exec(changed)?.[0];
    if (found === undefined) throw new Error(`nothing to swap: ${from}`);
    return changed.replace(found, to);
  }, text);
}

/** The kinds of work in the plan of a shipped item. */
const workOf = ({ item, size }: Hazard): ReadonlySet<string> => new Set(planOnce(modelOf(itemNamed(item), size), []).steps.map(({ action }) => action));

/** What the tool says of a hazard's item: its report, or the faults of its file; found once for each hazard, by its own name. */
const toldOf = ({ name, ...hazard }: Hazard): Report | FaultError => toldBy(name, hazard);

const toldBy = once((_name: string, { item, size, swaps = [], kit = [] }: Omit<Hazard, 'name'>): Report | FaultError => {
  const file = `steps/${item}/item.yaml`;
  const files = filesInMemory({
    [file]: swapped(textOf(fileOf(item)), swaps),
    'steps/kits/stall-kit.yaml': swapped(textOf('steps/kits/stall-kit.yaml'), kit),
  });
  try {
    const read = readItem(files, file);
    return checkModel(buildModel(read, size), declaredFor(read, size));
  } catch (error) {
    if (error instanceof FaultError) return error;
    throw error;
  }
});

describe('the table of hazards', () => {
  it('has at least forty, each by its own name and with its harm and source', () => {
    expect(hazards.length).toBeGreaterThanOrEqual(40);
    expect(new Set(hazards.map(({ name }) => name)).size).toBe(hazards.length);
    for (const { harm, by } of hazards) expect([harm, by].every((text) => text.length > 5)).toBe(true);
  });

  it.each(hazards.map((hazard) => [hazard.name, hazard] as const))('%s', (_, hazard) => {
    const told = toldOf(hazard);
    const { says } = hazard;
    if ('refused' in says) {
      if (!(told instanceof FaultError)) throw new Error('the file was not refused');
      expect(told.faults.map(({ field }) => field)).toContain(says.refused);
      expect(told.message).toContain(says.remedy);
      return;
    }
    if (told instanceof FaultError) throw told;
    if ('step' in says) {
      expect(workOf(hazard)).toContain(says.step);
      expect(WORK[says.step].cautions).toContain(says.caution);
      expect(WORK[says.step].tools).toContain(says.tool);
      return;
    }
    const [name, verdict] = says;
    const found = told.findings.filter((finding) => finding.name === name);
    expect(found.map((finding) => finding.verdict)).toContain(verdict);
    if (verdict === 'fail') expect(told.advice.safeLoadPerDeck).toBeNull();
  });
});

describe('every check', () => {
  it('says something of a hazard’s item, or says why not: never a silent pass', () => {
    for (const hazard of [...hazards.slice(0, 40), ...hazards.slice(-8)]) {
      const told = toldOf(hazard);
      if (told instanceof FaultError) continue;
      for (const { name, because } of told.notApplied) expect([hazard.name, name, because]).not.toEqual([hazard.name, name, 'nothing to measure']);
    }
  });
});
