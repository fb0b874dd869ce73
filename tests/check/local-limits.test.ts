// Values known from memory alone may be set by local rules, and the findings say so.
import { describe, expect, it } from 'vitest';
import { checkModel, defaultLimits, findingText, type Finding, type FindingName } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { FaultError, declaredFor, filesInMemory, readItem, type LocalLimitName } from '../../src/read/index.ts';
import { structureFile, structureText, type StructureName } from '../support/structures.ts';
import { readFileSync } from 'node:fs';

const kitFile = 'steps/kits/stall-kit.yaml';
const kitText = readFileSync(new URL(`../../${kitFile}`, import.meta.url), 'utf8');
const withRules = (rules: string): string => kitText.replace('\ncontents:', `\nlocal-limits:\n${rules}\n\ncontents:`);

const findingsWith = (name: StructureName, rules: string): readonly Finding[] => {
  const file = structureFile(name);
  const item = readItem(filesInMemory({ [file]: structureText(name), [kitFile]: rules === '' ? kitText : withRules(rules) }), file);
  return checkModel(buildModel(item, 'standard'), declaredFor(item, 'standard')).findings;
};
const named = (findings: readonly Finding[], name: FindingName): Finding => {
  const found = findings.find((finding) => finding.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

describe('a limit set by local rules', () => {
  const rule = (name: string, value: string): string => `  ${name}: { value: ${value}, source: rule 7 of the island }`;

  it.each([
    ['chest', 'lid-lift', 'lid-lift', '38 N', 38], ['chest', 'vent-area', 'lid-vent', '8 cm^2', 800], ['chest', 'hinge-most', 'lid-gap', '13 mm', 13],
  ] as const)('of the %s, %s: %s is judged by %s and prints the rule and what it stands in place of', (item, name, finding, value, limit) => {
    const found = named(findingsWith(item, rule(name, value)), finding);
    expect(found.limit).toBe(limit);
    expect(findingText(found)).toMatch(/rule 7 of the island \(local value of the kit, in place of [\d.]+ (N|mm|mm²)\)/);
    expect(named(findingsWith(item, ''), finding).source).not.toContain('local value');
  });

  it('twice the hold asked of a lid’s stay is twice the limit', () => {
    const [usual, local] = ['', rule('lid-factor', '4')].map((rules) => named(findingsWith('chest', rules), 'lid-holds').limit);
    expect(local).toBeCloseTo(2 * (usual ?? 0), 4);
  });

  it('an item that passed fails by a stricter rule', () => {
    expect(named(findingsWith('chest', rule('lid-lift', '5 N')), 'lid-lift').verdict).toBe('fail');
  });

  it('a load set higher is borne by every part, and named where a part is judged', () => {
    const [usual, local] = [rule('seat-test', '700 N'), rule('seat-test', '840 N')].map((rules) => named(findingsWith('bench', rules), 'panel-core'));
    expect(local?.figure).toBeCloseTo(1.2 * (usual?.figure ?? 0), 2);
    expect(local?.source).toContain('rule 7 of the island');
  });

  it.each([
    ['  lid-lift: { value: 38 N }', 'local-limits.lid-lift.source'], ['  lid-lift: { value: 38 mm, source: a rule }', 'local-limits.lid-lift.value'],
    ['  lid-hold: { value: 2, source: a rule }', 'local-limits.lid-hold'], ['  spread: { value: 0, source: a rule }', 'local-limits.spread.value'],
  ])('%s is refused at its field', (rules, field) => {
    try {
      findingsWith('chest', rules);
    } catch (error) {
      if (!(error instanceof FaultError)) throw error;
      expect(error.faults.map((fault) => fault.field)).toContain(field);
      return;
    }
    throw new Error('it was read');
  });
});

describe('limits from memory', () => {
  /** What a kit may set, by the table's names; a name left out does not compile. */
  const local: Readonly<Record<LocalLimitName, true>> = {
    factorOfSafety: true, seatTest: true, pad: true, spread: true, guardPush: true, tubeShear: true, screenDriftRatio: true, screenFactor: true, creepSkin: true, creepCore: true, lidFactor: true, lidLift: true, hingeLeast: true, hingeMost: true, ventArea: true,
  };
  /** Never more than a caution, or a constant of nature. */
  const harmless = ['gravity', 'backPushHigh', 'backPushSlope', 'backPushZero', 'backPushSeat', 'backPushReach', 'limbLeast', 'limbMost', 'slatLeast', 'slatMost', 'markTolerance'];

  it('can all be set by local rules where they can fail an item', () => {
    const fromMemory = Object.entries(defaultLimits).filter(([, { source }]) => /\bM\)/.test(source)).map(([name]) => name);
    expect(fromMemory.filter((name) => !Object.hasOwn(local, name) && !harmless.includes(name))).toEqual([]);
    expect(Object.keys(local).filter((name) => !fromMemory.includes(name))).toEqual([]);
  });
});
