import { ASPECTS, plain, type Change } from './compare.ts';
import type { Reprint } from './reprints.ts';
import type { Pieces, StillServing } from './still-serve.ts';

/** What changed of a size, and which pages of its booklets on A4 and Letter that means. */
export interface SizeChanges {
  readonly item: string;
  readonly size: string;
  /** Null where it was not made before. */
  readonly changes: readonly Change[] | null;
  readonly reprints: readonly Reprint[];
  /** Where cut lengths changed. */
  readonly serving: StillServing | null;
}

/** More than this of one aspect is counted, not listed: pictures alone. */
const LISTED: Readonly<Partial<Record<Change['aspect'], number>>> = { picture: 12 };

/** In plain lines, the size first. */
export function reportOf({ item, size, changes, reprints, serving }: SizeChanges): readonly string[] {
  if (changes === null) return [`${item} ${size}: not made before`];
  if (changes.length === 0) return [`${item} ${size}: nothing changed`];
  return [
    `${item} ${size}: ${ASPECTS.flatMap((aspect) => counted(aspect, changes)).join(', ')}`,
    ...ASPECTS.flatMap((aspect) => linesOf(aspect, changes.filter((change) => change.aspect === aspect))),
    ...(serving === null ? [] : servingLines(serving)),
    ...reprints.map(reprintLine),
  ];
}

/** Of pieces that were sawn for the earlier build. */
function servingLines({ asTheyAre, shortened, fromOffCuts }: StillServing): readonly string[] {
  const all = (pieces: readonly Pieces[]): string => pieces.map(({ kind, length, count }) => `${kind} ${count} of ${plain(length)} mm`).join(', ');
  return [
    ...(asTheyAre.length > 0 ? [line('sawn', `serve as they are: ${all(asTheyAre)}`)] : []),
    ...shortened.map(({ to, ...piece }) => line('sawn', `can be shortened: ${all([piece])} to ${plain(to)} mm`)),
    ...(fromOffCuts.length > 0 ? [line('sawn', `come from what was left over: ${all(fromOffCuts)}`)] : []),
  ];
}

const PAPER_NAMES: Readonly<Record<string, string>> = { a4: 'A4', letter: 'Letter' };

function reprintLine({ edition, paper, langs, pages, pageCount }: Reprint): string {
  const of = [edition, ...(paper === null ? [] : [`on ${PAPER_NAMES[paper] ?? paper}`]), ...(langs.length > 0 ? [`in ${langs.join(', ')}`] : [])].join(' ');
  return line('pages', `to print again of ${pageCount}, ${of}: ${ranges(pages)}`);
}

const NAMES: Readonly<Record<Change['aspect'], readonly [one: string, more: string]>> = {
  measure: ['measure', 'measures'], length: ['length', 'lengths'], part: ['kind of part', 'kinds of part'], cut: ['cut length', 'cut lengths'], tubes: ['saw plan', 'saw plans'],
  pattern: ['pattern', 'patterns'], step: ['step', 'steps'], finding: ['finding', 'findings'], load: ['load', 'loads'], picture: ['picture', 'pictures'],
};

function counted(aspect: Change['aspect'], changes: readonly Change[]): readonly string[] {
  const count = changes.filter((change) => change.aspect === aspect).length;
  const [one, more] = NAMES[aspect];
  return count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];
}

function linesOf(aspect: Change['aspect'], changes: readonly Change[]): readonly string[] {
  const most = LISTED[aspect] ?? Infinity;
  const listed = changes.slice(0, most).map((change) => line(aspect, told(change)));
  return changes.length > most ? [...listed, line(aspect, `and ${changes.length - most} more`)] : listed;
}

const line = (aspect: string, text: string): string => `  ${aspect.padEnd(8)} ${text}`;

function told({ aspect, name, before, after }: Change): string {
  if (before === null) return aspect === 'picture' ? `${name}: new` : `${name}: new, ${after ?? ''}`;
  if (after === null) return `${name}: gone`;
  return aspect === 'picture' ? name : `${name}: ${before} → ${after}`;
}

/** `1, 4–6` */
function ranges(pages: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const page of [...pages].sort((one, other) => one - other)) {
    const last = runs.at(-1);
    if (last !== undefined && page === last[1] + 1) last[1] = page;
    else runs.push([page, page]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
}
