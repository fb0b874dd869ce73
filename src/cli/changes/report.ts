import { ASPECTS, ranges, type Change, type Pieces, type Reprint, type StillServing, type Told } from '../../booklet/index.ts';

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
  const all = (pieces: readonly Pieces[]): string => pieces.map(({ kind, length, count }) => `${kind} ${count} of ${length} mm`).join(', ');
  return [
    ...(asTheyAre.length > 0 ? [line('sawn', `serve as they are: ${all(asTheyAre)}`)] : []),
    ...shortened.map(({ to, ...piece }) => line('sawn', `can be shortened: ${all([piece])} to ${to} mm`)),
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

function told({ aspect, name, nth, before, after }: Change): string {
  const called = `${CALLED[name] ?? name}${nth > 1 ? ` (${nth})` : ''}`;
  if (before === null) return aspect === 'picture' ? `${called}: new` : `${called}: new, ${after === null ? '' : toldText(after)}`;
  if (after === null) return `${called}: gone`;
  if (aspect === 'picture') return called;
  return before.is === 'content' ? `${called}: as it was → another` : `${called}: ${toldText(before)} → ${toldText(after)}`;
}

/** What has no name of the item's own. */
const CALLED: Readonly<Record<string, string>> = {
  'stock-tubes': 'stock tubes', 'saw-cuts': 'saw cuts', 'flat-pattern': 'flat pattern', 'safe-load': 'safe load', tips: 'tips when pushed with', wall: 'fixed to a wall',
};

const withUnit = (value: number, unit: string): string => (unit === '1' ? String(value) : `${value} ${unit}`);

function toldText(told: Told): string {
  switch (told.is) {
    case 'figure': return told.value === null ? 'none' : withUnit(told.value, told.unit);
    case 'pieces': return told.pieces.map(({ count, length }) => `${count} of ${length} mm`).join(', ');
    case 'judged': return `${told.verdict}, ${told.figure} of ${withUnit(told.limit, told.unit)}`;
    case 'wall': return told.wall ?? 'no';
    case 'place': return `step ${told.step}`;
    case 'work': return [
      `${told.times} times`, `${told.people} people`, `${told.minutes} min`,
      ...told.newParts.map(({ kind, count }) => `${count} ${kind}`), ...(told.tools.length > 0 ? [`with ${told.tools.join(' and ')}`] : []), ...(told.cautions.length > 0 ? [`mind ${told.cautions.join(' and ')}`] : []),
    ].join(', ');
    case 'content': return told.content;
  }
}
