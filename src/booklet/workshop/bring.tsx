import type { ReactNode } from 'react';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { Spoken } from '../pages/spoken.tsx';
import { sheets } from '../pages/sheet.ts';
import { toolSizesText } from '../pages/before.tsx';
import { sizeText } from '../pages/part-sizes.ts';
import { suppliesOf, toolSizesOf, type Step } from '../../plan/index.ts';
import { isolate } from '../words/index.ts';
import { chapterPages, subheading, textHeight, textRow, type Row } from './row.tsx';
import { thingsFor } from './things.ts';
import type { KitStock, PackInput } from './types.ts';

/** Rows of the tables and the tools' pictures, mm. */
const toolRow = 12;
const toolGlyph = 10;
const thingWidth = 130;

/** Tools for each team, protection and consumables, stock for the order. */
export function bring(input: PackInput): readonly ReactNode[] {
  const { words } = input;
  return chapterPages(input, 'bring', [
    subheading(words.t('pack.bring.tools')),
    toolHead(input),
    ...input.tools.map((tool) => toolRowOf(input, tool)),
    subheading(words.t('pack.bring.things.head')),
    ...thingsFor(input).map(({ name, count }) => countedRow(input, words.t(`pack.bring.things.${name}`, { bar: words.measure(100, 'mm') }), count)),
    ...suppliesOf({ steps: stepsOf(input) }).map(({ name, count, size }) => countedRow(input, words.t(`parts.${name}.name`), count, sizeText(words, { size, isRound: true }))),
    subheading(words.t('pack.bring.stock')),
    { ...textRow(input, words.t('pack.bring.stock-says')), leads: true },
    ...input.stock.flatMap((kit) => stockRows(input, kit)),
  ]);
}

/** The steps of every item of the order, as often as it is made. */
const stepsOf = ({ items }: PackInput): readonly Step[] => items.flatMap(({ plan, count }) => Array.from({ length: count }, () => plan.steps).flat());

/** The table's columns: each team's share, all together at once, and on the day before. */
function toolHead({ words }: PackInput): Row {
  return {
    height: toolRow,
    leads: true,
    node: <div className="columns head"><span />{(['each', 'all', 'day-before'] as const).map((name) => <b key={name}>{words.t(`pack.bring.${name}`)}</b>)}</div>,
  };
}

function toolRowOf(input: PackInput, { tool, learners, before }: PackInput['tools'][number]): Row {
  const { words, glyphs } = input;
  const name = words.t(`booklet.tools.${tool}`);
  const sizes = toolSizesText(words, toolSizesOf({ steps: stepsOf(input) }, tool));
  const counts = [learners > 0 ? 1 : 0, learners, before];
  return {
    height: toolRow,
    node: (
      <div className="columns">
        <span className="thing"><GlyphMark glyph={glyphs.tool(tool)} label={name} height={toolGlyph} />{name}{sizes !== null && <>{' '}<Spoken text={sizes} /></>}</span>
        {counts.map((count, index) => <b key={index}><Spoken text={count === 0 ? '–' : words.times(count)} /></b>)}
      </div>
    ),
  };
}

function countedRow(input: PackInput, name: string, count: number, size: string | null = null): Row {
  return {
    height: Math.max(8, textHeight(input, name, thingWidth, 2.5)),
    node: (
      <div className="counted main">
        <span style={{ width: `${thingWidth}mm` }}><Spoken text={size === null ? name : `${name}, ${size}`} /></span>
        <b><Spoken text={input.words.times(count)} /></b>
      </div>
    ),
  };
}

function stockRows(input: PackInput, { kit, rows, thrift }: KitStock): readonly Row[] {
  const { words } = input;
  const name = (kind: KitStock['rows'][number]['kind']): string => {
    if (kind === 'tube') return words.t('pack.bring.tube');
    return kind === 'panel-stock' ? words.t('pack.bring.panel') : words.t(`parts.${kind}.name`);
  };
  const title = words.t(`items.kits.${kit}`);
  return [
    { height: textHeight(input, title, sheets.a4.main), leads: true, node: <p className="main"><b>{title}</b></p> },
    ...rows.map(({ kind, count, size, pile }) => countedRow(input, name(kind), count, detailOf(input, size, pile))),
    ...thrift.map((each) => textRow(input, `${name(each.kind)}: ${thriftText(input, each)}`)),
  ];
}

/** How much of the stock the cut plan leaves over, and how far it is at most from the best. */
function thriftText({ words }: PackInput, { leftOver, aboveLeast }: KitStock['thrift'][number]): string {
  const share = (part: number): string => words.measure(100 * part, '%', 1);
  const least = aboveLeast === 0 ? words.t('pack.bring.least') : words.t('pack.bring.above-least', { share: share(aboveLeast) });
  return `${words.t('pack.bring.left-over', { share: share(leftOver) })} ${least}`;
}

/** Size and pile, as far as they are told. */
function detailOf(input: PackInput, size: readonly number[], pile: KitStock['rows'][number]['pile']): string | null {
  const place = pile?.from === 'kit' ? input.words.t('pack.bring.from-kit') : pile?.name ?? null;
  const told = [sizeOf(input, size), place === null ? null : isolate(place)].filter((each) => each !== null);
  return told.length === 0 ? null : told.join(', ');
}

const sizeOf = ({ words }: PackInput, size: readonly number[]): string | null => {
  if (size.length === 0) return null;
  return size.length === 1 ? words.measure(size[0] ?? 0, 'mm') : words.measures(size, 'mm');
};
