import type { BuildRecord } from './build-record.ts';

/** What may have changed, in the order in which it is told. */
export const ASPECTS = ['measure', 'length', 'part', 'cut', 'tubes', 'pattern', 'step', 'finding', 'load', 'picture'] as const;

/** One thing that is otherwise than before; `before` is null for what is new, `after` for what is gone. */
export interface Change {
  readonly aspect: (typeof ASPECTS)[number];
  readonly name: string;
  readonly before: string | null;
  readonly after: string | null;
}

type Told = readonly [name: string, value: string];

/** All that a change did to a size. */
export function changesBetween(before: BuildRecord, after: BuildRecord): readonly Change[] {
  const of = (aspect: Change['aspect'], tell: (record: BuildRecord) => readonly Told[]): readonly Change[] => paired(aspect, tell(before), tell(after));
  return [
    ...of('measure', ({ parameters }) => Object.entries(parameters).map(([name, { value, unit }]) => [name, unit === '1' ? plain(value) : `${plain(value)} ${unit}`])),
    ...of('length', ({ dimensions }) => dimensions.map(({ name, value }) => [name, `${plain(value)} mm`])),
    ...of('part', ({ parts }) => parts.map(({ kind, count }) => [kind, plain(count)])),
    ...of('cut', ({ cutLengths }) => grouped(cutLengths).map(([kind, all]) => [kind, all.map(({ count, length }) => `${count} of ${plain(length)} mm`).join(', ')])),
    ...of('tubes', ({ cutPlan }) => [['stock tubes', plain(cutPlan.tubesUsed)]]),
    ...of('tubes', ({ cutPlan }) => [['saw cuts', JSON.stringify(cutPlan.patterns)]]).map(another),
    ...of('pattern', ({ flatPattern }) => [['flat pattern', JSON.stringify(flatPattern)]]).map(another),
    ...stepChanges(before, after),
    ...of('finding', ({ findings }) => numbered(findings).map(([name, { verdict, figure, limit, unit }]) => [name, `${verdict}, ${plain(figure)} of ${plain(limit)}${unit === '1' ? '' : ` ${unit}`}`])),
    ...of('load', ({ advice: { safeLoadPerDeck, tippingForce, wall } }) => [
      ['safe load', safeLoadPerDeck === null ? 'none' : `${plain(safeLoadPerDeck)} N`], ['tips when pushed with', `${plain(tippingForce)} N`], ['fixed to a wall', wall ?? 'no'],
    ]),
    ...of('picture', ({ pictures }) => pictures.map(({ id, sha256 }) => [id, sha256])),
  ];
}

/** Six figures are enough for a reader. */
export const plain = (value: number): string => String(Number(value.toPrecision(6)));

/** Of what is too much to tell only that it is another. */
const another = (change: Change): Change => ({ ...change, before: 'as it was', after: 'another' });

function paired(aspect: Change['aspect'], before: readonly Told[], after: readonly Told[]): readonly Change[] {
  const [was, is] = [new Map(before), new Map(after)];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((name) => {
    const [one, other] = [was.get(name) ?? null, is.get(name) ?? null];
    return one === other ? [] : [{ aspect, name, before: one, after: other }];
  });
}

function grouped<Of extends { readonly kind: string }>(all: readonly Of[]): readonly (readonly [string, readonly Of[]])[] {
  return [...new Set(all.map(({ kind }) => kind))].map((kind) => [kind, all.filter((each) => each.kind === kind)]);
}

/** Findings of one name are told apart by their place among them. */
function numbered<Of extends { readonly name: string }>(all: readonly Of[]): readonly (readonly [string, Of])[] {
  const seen = new Map<string, number>();
  return all.map((one) => {
    const count = (seen.get(one.name) ?? 0) + 1;
    seen.set(one.name, count);
    return [count === 1 ? one.name : `${one.name} (${count})`, one];
  });
}

type Step = BuildRecord['steps'][number];

/** Steps added, removed, done otherwise, and moved: those that are not where the others leave them. */
function stepChanges({ steps: before }: BuildRecord, { steps: after }: BuildRecord): readonly Change[] {
  const changed = paired('step', before.map((step) => [step.key, work(step)]), after.map((step) => [step.key, work(step)]));
  const stayed = new Set(longestCommon(before.map(({ key }) => key), after.map(({ key }) => key)));
  const moved = after.filter(({ key }) => !stayed.has(key)).flatMap(({ key, number }): Change[] => {
    const was = before.find((step) => step.key === key);
    return was === undefined ? [] : [{ aspect: 'step', name: key, before: `step ${was.number}`, after: `step ${number}` }];
  });
  return [...changed, ...moved];
}

const work = ({ times, people, minutes, newParts, tools, cautions }: Step): string => [
  `${times} times`, `${people} people`, `${plain(minutes)} min`,
  ...newParts.map(({ kind, count }) => `${count} ${kind}`), ...(tools.length > 0 ? [`with ${tools.join(' and ')}`] : []), ...(cautions.length > 0 ? [`mind ${cautions.join(' and ')}`] : []),
].join(', ');

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
