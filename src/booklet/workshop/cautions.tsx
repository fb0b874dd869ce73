import type { ReactNode } from 'react';
import type { Caution } from '../../plan/index.ts';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { sheets } from '../pages/sheet.ts';
import { chapterPages, textHeight, textRow, type Row } from './row.tsx';
import type { PackInput } from './types.ts';

/** Height of a sign, between signs, and width of their column, mm. */
const sign = 17;
const signGap = 2;
const signColumn = 3 * sign + 2 * signGap + 5;

/** What may hurt, each with the signs that go with it. */
const dangers: readonly { readonly name: string; readonly signs: readonly Caution[]; readonly plain?: 'load' }[] = [
  { name: 'knives', signs: ['sharp', 'gloves'] },
  { name: 'dust', signs: ['dust', 'eyes', 'gloves'] },
  { name: 'drilling', signs: ['eyes', 'dust'] },
  { name: 'lifting', signs: ['crush'] },
  { name: 'load', signs: ['climbing'], plain: 'load' },
  { name: 'tipping', signs: ['tipping'] },
  { name: 'children', signs: ['children'] },
];

/** The dangers of this work, whatever the item, and that local codes and licensed practice go first. */
export function cautions(input: PackInput): readonly ReactNode[] {
  const defer = input.words.t('pack.defer');
  return chapterPages(input, 'cautions', [...dangers.map((danger) => dangerRow(input, danger)), textRow(input, defer, <b>{defer}</b>)]);
}

function dangerRow(input: PackInput, { name, signs, plain }: (typeof dangers)[number]): Row {
  const { words, glyphs } = input;
  const says = words.t(`pack.cautions.${name}`);
  const width = sheets.a4.margin + sheets.a4.gutter + sheets.a4.main - signColumn;
  return {
    height: Math.max(sign + 4, textHeight(input, says, width, 4)) + 2,
    node: (
      <div className="danger">
        <div className="signs" style={{ width: `${signColumn}mm`, gap: `${signGap}mm` }}>
          {plain && <GlyphMark glyph={glyphs.plain(plain)} label={words.t('pack.cautions.load-sign')} height={sign} />}
          {signs.map((caution) => <GlyphMark key={caution} glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={sign} />)}
        </div>
        <p style={{ width: `${width}mm` }}>{says}</p>
      </div>
    ),
  };
}
