import { lineScale, textLines } from '../pages/setting.ts';
import { lineHeight, textSize } from '../pages/sheet.ts';
import type { Tall } from '../pages/pack.ts';
import { COLUMNS, columnEnd, headingLine, headingPad, pageWidth, rowPad } from './measures.ts';
import { BETWEEN, piecesSaid, saidName, saidTold } from './said.ts';
import { ASPECTS, type Change, type ChangePagesInput } from './types.ts';

/** A line of the tables: a heading over those behind it, or up to three texts side by side. */
export type Row = Tall & ({ readonly heading: string } | { readonly cells: readonly string[] });

/** Everything but pages and pictures, in order: what is otherwise of each aspect, then which pieces that were sawn before still serve. */
export function changeRows(input: ChangePagesInput): readonly Row[] {
  const { words, changes } = input;
  return [
    ...ASPECTS.filter((aspect) => aspect !== 'picture').flatMap((aspect) => {
      const of = changes.filter((change) => change.aspect === aspect);
      return of.length === 0 ? [] : [headingRow(input, words.t(HEADINGS[aspect])), ...of.map((change) => cellsRow(input, [saidName(input, change), saidTold(input, change, 'before'), saidTold(input, change, 'after')]))];
    }),
    ...servingRows(input),
  ];
}

const HEADINGS: Readonly<Record<Exclude<Change['aspect'], 'picture'>, string>> = {
  measure: 'page.measures.name', length: 'booklet.chapters.dimensions', part: 'booklet.chapters.parts', cut: 'booklet.chapters.lengths', tubes: 'cutting.title',
  pattern: 'booklet.chapters.pattern', step: 'booklet.chapters.steps', finding: 'booklet.colophon.check', load: 'booklet.chapters.load',
};

function servingRows(input: ChangePagesInput): readonly Row[] {
  const { words, serving } = input;
  if (serving === null) return [];
  const { asTheyAre, shortened, fromOffCuts } = serving;
  const list = (pieces: typeof asTheyAre): string => pieces.map((piece) => piecesSaid(input, piece)).join(BETWEEN);
  const rows = [
    ...(asTheyAre.length > 0 ? [[words.t('changes.serve'), list(asTheyAre)]] : []),
    ...shortened.map(({ to, ...piece }) => [words.t('changes.shorten', { length: words.measure(to, 'mm', 1) }), list([piece])]),
    ...(fromOffCuts.length > 0 ? [[words.t('changes.from-off-cuts'), list(fromOffCuts)]] : []),
  ];
  return rows.length === 0 ? [] : [headingRow(input, words.t('changes.sawn')), ...rows.map((cells) => cellsRow(input, cells))];
}

export const headingRow = ({ words }: ChangePagesInput, heading: string): Row => ({ heading, height: headingPad + headingLine * lineScale(words), leads: true });

export function cellsRow(input: ChangePagesInput, cells: readonly string[]): Row {
  const shares = cells.length === 3 ? COLUMNS.three : COLUMNS.two;
  const lines = cells.map((text, index) => textLines(input.words, text, pageWidth(input) * (shares[index] ?? 1) - columnEnd, { size: textSize, bold: index === 0 }));
  return { cells, height: Math.max(...lines) * lineHeight * lineScale(input.words) + rowPad };
}
