import type { ReactNode } from 'react';
import type { WorkerCheck } from '../../plan/index.ts';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { sheets } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { checksOf } from './mistakes.tsx';
import { pieceName } from './names.ts';
import { chapterPages, subheading, textHeight, textRow, type Row } from './row.tsx';
import type { PackInput, PackItem } from './types.ts';

const checkHeight = 16;
const pictureHeight = 12;
/** A pair's picture is one and a half times as wide as high. */
const pictureWidth = 1.5 * pictureHeight + 3;
const fieldHeight = 17;
const boxColumn = 10.5;
const columnGap = 5;

/** A list for each item, to be copied for every piece: what is looked at, and the trainer's name, date and signature. */
export function signPages(input: PackInput): readonly ReactNode[] {
  return input.items.flatMap((item) => chapterPages(input, 'sign', rowsOf(input, item)));
}

function rowsOf(input: PackInput, item: PackItem): readonly Row[] {
  const { words } = input;
  return [
    subheading(pieceName(words, item)),
    textRow(input, words.t('pack.sign.says', { pieces: item.count })),
    fields(input, ['piece', 'built-by']),
    ...inTwos(checksOf(item)).map((checks) => checkRow(input, checks)),
    ...(['passed', 'told'] as const).map((name) => stated(input, words.t(`pack.sign.${name}`))),
    { ...fields(input, ['name', 'date']), leads: true },
    fields(input, ['signature']),
  ];
}

/** Two checks side by side, each the right picture with a box to tick. */
function checkRow(input: PackInput, checks: readonly WorkerCheck[]): Row {
  const { words, glyphs } = input;
  const width = (sheets.a4.main - columnGap) / 2;
  const told = width - boxColumn - pictureWidth;
  return {
    height: Math.max(checkHeight, ...checks.map(({ name }) => textHeight(input, words.t(`checks.${name}`), told, 2))),
    node: (
      <div className="checks main" style={{ gap: `${columnGap}mm` }}>
        {checks.map(({ name, kind }) => (
          <div className="to-sign" key={name} style={{ width: `${width}mm` }}>
            <span className="box" />
            <span className="right" style={{ width: `${pictureWidth}mm` }}>
              <GlyphMark glyph={kind === 'pair' ? glyphs.pair(name).right : glyphs.plain('gauge')} label={words.t('booklet.alt.right', { check: words.t(`checks.${name}`) })} height={pictureHeight} />
            </span>
            <p>{words.t(`checks.${name}`)}</p>
          </div>
        ))}
      </div>
    ),
  };
}

const inTwos = <Entry,>(entries: readonly Entry[]): readonly (readonly Entry[])[] =>
  Array.from({ length: Math.ceil(entries.length / 2) }, (_, index) => entries.slice(2 * index, 2 * index + 2));

/** A sentence to be ticked. It stays with the signature. */
const stated = (input: PackInput, text: string): Row => ({
  height: Math.max(9, textHeight(input, text, sheets.a4.main - boxColumn)),
  leads: true,
  node: <div className="to-sign main"><span className="box" /><p><Spoken text={text} /></p></div>,
});

/** Lines to write on, each over its name. */
const fields = ({ words }: PackInput, names: readonly string[]): Row => ({
  height: fieldHeight,
  node: <div className="fields main">{names.map((name) => <span key={name}>{words.t(`pack.sign.${name}`)}</span>)}</div>,
});
