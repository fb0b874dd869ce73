import { ASPECTS, type Change } from './compare.ts';

/** What changed of a size, and on which pages of its booklet of pictures, of so many. */
export interface SizeChanges {
  readonly item: string;
  readonly size: string;
  /** Null where it was not made before. */
  readonly changes: readonly Change[] | null;
  readonly pages: readonly number[];
  readonly pageCount: number;
}

/** More than this of one aspect is counted, not listed: pictures alone. */
const LISTED: Readonly<Partial<Record<Change['aspect'], number>>> = { picture: 12 };

/** In plain lines, the size first. */
export function reportOf({ item, size, changes, pages, pageCount }: SizeChanges): readonly string[] {
  if (changes === null) return [`${item} ${size}: not made before`];
  if (changes.length === 0) return [`${item} ${size}: nothing changed`];
  return [
    `${item} ${size}: ${ASPECTS.flatMap((aspect) => counted(aspect, changes)).join(', ')}`,
    ...ASPECTS.flatMap((aspect) => linesOf(aspect, changes.filter((change) => change.aspect === aspect))),
    ...(pages.length > 0 ? [line('pages', `to print again of ${pageCount}, pictures on A4: ${ranges(pages)}`)] : []),
  ];
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
