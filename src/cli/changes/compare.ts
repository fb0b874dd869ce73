import { ASPECTS, type Change, type Told } from '../../booklet/index.ts';
import type { BuildRecord } from './build-record.ts';

/** Something by its name, of several of one name by which it is, and what it is. */
interface Named {
  readonly name: string;
  readonly nth?: number;
  readonly step?: number;
  readonly told: Told;
}

type Tell = (record: BuildRecord) => readonly Named[];

/** How each aspect is told of a build. */
const TELL: Readonly<Record<Change['aspect'], Tell>> = {
  measure: ({ parameters }) => Object.entries(parameters).map(([name, { value, unit }]) => ({ name, told: figure(value, unit) })),
  length: ({ dimensions }) => dimensions.map(({ name, value }) => ({ name, told: figure(value, 'mm') })),
  part: ({ parts }) => parts.map(({ kind, count }) => ({ name: kind, told: figure(count, '1') })),
  cut: ({ cutLengths }) => grouped(cutLengths).map(([name, all]) => ({ name, told: { is: 'pieces', pieces: all.map(({ kind, length, count }) => ({ kind, length: six(length), count })) } })),
  tubes: ({ cutPlan }) => [{ name: 'stock-tubes', told: figure(cutPlan.tubesUsed, '1') }, { name: 'saw-cuts', told: content(cutPlan.patterns) }],
  pattern: ({ flatPattern }) => [{ name: 'flat-pattern', told: content(flatPattern) }],
  step: ({ steps }) => steps.map(({ key, number, times, people, minutes, newParts, tools, cautions }) =>
    ({ name: key, step: number, told: { is: 'work', times, people, minutes: six(minutes), newParts, tools, cautions } })),
  finding: ({ findings }) => numbered(findings.map(({ name, verdict, figure: value, limit, unit }) => ({ name, told: { is: 'judged', verdict, figure: six(value), limit: six(limit), unit } }))),
  load: ({ advice: { safeLoadPerDeck, loads, tippingForce, wall } }) => [
    ...numbered(differ(loads) ? loads.map(({ load }) => ({ name: 'safe-load', told: figure(load, 'N') })) : [{ name: 'safe-load', told: { is: 'figure', value: safeLoadPerDeck === null ? null : six(safeLoadPerDeck), unit: 'N' } }]), { name: 'tips', told: figure(tippingForce, 'N') }, { name: 'wall', told: { is: 'wall', wall } },
  ],
  picture: ({ pictures }) => pictures.map(({ id, sha256 }) => ({ name: id, told: { is: 'content', content: sha256 } })),
};

/** Whether places bear unlike loads. */
const differ = (loads: readonly { readonly load: number }[]): boolean => loads.some(({ load }) => load !== loads[0]?.load);

/** All that a change did to a size. */
export const changesBetween = (before: BuildRecord, after: BuildRecord): readonly Change[] =>
  ASPECTS.flatMap((aspect) => [...paired(aspect, TELL[aspect](before), TELL[aspect](after)), ...(aspect === 'step' ? moved(before, after) : [])]);

const figure = (value: number, unit: string): Told => ({ is: 'figure', value: six(value), unit });
const content = (data: unknown): Told => ({ is: 'content', content: JSON.stringify(data) });

/** Six figures are enough for a reader. */
const six = (value: number): number => Number(value.toPrecision(6));

function paired(aspect: Change['aspect'], before: readonly Named[], after: readonly Named[]): readonly Change[] {
  const of = ({ name, nth = 1 }: Named): string => JSON.stringify([name, nth]);
  const [was, is] = [before, after].map((all) => new Map(all.map((each) => [of(each), each]))) as [Map<string, Named>, Map<string, Named>];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((key) => {
    const [one, other] = [was.get(key), is.get(key)];
    const known = other ?? one;
    if (known === undefined || JSON.stringify(one?.told) === JSON.stringify(other?.told)) return [];
    return [{ aspect, name: known.name, nth: known.nth ?? 1, step: known.step ?? null, before: one?.told ?? null, after: other?.told ?? null }];
  });
}

function grouped<Of extends { readonly kind: string }>(all: readonly Of[]): readonly (readonly [string, readonly Of[]])[] {
  return [...new Set(all.map(({ kind }) => kind))].map((kind) => [kind, all.filter((each) => each.kind === kind)]);
}

/** Findings of one name are told apart by their place among them. */
function numbered(all: readonly Named[]): readonly Named[] {
  const seen = new Map<string, number>();
  return all.map((one) => {
    const nth = (seen.get(one.name) ?? 0) + 1;
    seen.set(one.name, nth);
    return { ...one, nth };
  });
}

/** Steps that are not where the others leave them. */
function moved({ steps: before }: BuildRecord, { steps: after }: BuildRecord): readonly Change[] {
  const stayed = new Set(longestCommon(before.map(({ key }) => key), after.map(({ key }) => key)));
  return after.filter(({ key }) => !stayed.has(key)).flatMap(({ key, number }): Change[] => {
    const was = before.find((step) => step.key === key);
    return was === undefined ? [] : [{ aspect: 'step', name: key, nth: 1, step: number, before: { is: 'place', step: was.number }, after: { is: 'place', step: number } }];
  });
}

/** The longest list that is in both in this order. */
export function longestCommon(one: readonly string[], other: readonly string[]): readonly string[] {
  const best: number[][] = Array.from({ length: one.length + 1 }, () => new Array<number>(other.length + 1).fill(0));
  const at = (i: number, j: number): number => best[i]?.[j] ?? 0;
  for (let i = one.length - 1; i >= 0; i -= 1) {
    for (let j = other.length - 1; j >= 0; j -= 1) {
      const row = best[i];
      if (row !== undefined) row[j] = one[i] === other[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const found: string[] = [];
  for (let [i, j] = [0, 0]; i < one.length && j < other.length;) {
    const here = one[i];
    if (here !== undefined && here === other[j]) { found.push(here); i += 1; j += 1; }
    else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return found;
}
