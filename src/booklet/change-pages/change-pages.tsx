import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { BookletPages } from '../pages/index.ts';
import { NumberedPage } from '../pages/numbered-page.tsx';
import { packPages, type Tall } from '../pages/pack.ts';
import { lineScale } from '../pages/setting.ts';
import { bandRoom, lineHeight, sheets } from '../pages/sheet.ts';
import { pageStyle } from '../pages/style.ts';
import { Head, reprintCells } from './head.tsx';
import { Pair, tallPairs, type TallPair } from './pairs.tsx';
import { cellsRow, changeRows, headingRow, type Row } from './rows.ts';
import { changePageStyle } from './style.ts';
import { ChangeTable } from './table.tsx';
import type { ChangePagesInput } from './types.ts';

/** Which print this is, over the tables of the first page, mm: in lines. */
const HEAD_LINES = 6;

/** All pages of what changed of a size: which pages to print again, each figure before and now, and each picture that is another beside its successor. */
export function changePages(input: ChangePagesInput): BookletPages {
  const { words, paper } = input;
  const room = bandRoom(sheets[paper]) - lineHeight;
  const tables = packPages([...reprintRows(input), ...changeRows(input)], room, room - HEAD_LINES * lineHeight * lineScale(words));
  const pairs = packPages<Tall & (TallPair | Row)>(input.pairs.length === 0 ? [] : [headingRow(input, words.t('changes.pictures')), ...tallPairs(input)], room);
  const contents = [
    ...(tables.length === 0 ? [[]] : tables).map((rows, index) => <>{index === 0 && <Head input={input} />}<ChangeTable words={words} rows={rows} /></>),
    ...pairs.map((entries) => <>{entries.map((entry, index) => <PairOrHeading key={index} input={input} entry={entry} />)}</>),
  ];
  return {
    html: contents.map((content, index) => renderToStaticMarkup(
      <NumberedPage of={input} title={words.t('changes.title')} number={index + 1} total={contents.length}>{content}</NumberedPage>,
    )).join('\n'),
    css: `${pageStyle([words], paper)}\n${changePageStyle}`,
    title: words.t('changes.title'),
    dir: words.about.direction,
    pageCount: contents.length,
  };
}

function reprintRows(input: ChangePagesInput): readonly Row[] {
  const { words, reprints } = input;
  return reprints.length === 0 ? [] : [headingRow(input, words.t('changes.print-again')), ...reprints.map((reprint) => cellsRow(input, reprintCells(input, reprint)))];
}

function PairOrHeading({ input, entry }: { readonly input: ChangePagesInput; readonly entry: TallPair | Row }): ReactNode {
  if ('pair' in entry) return <Pair input={input} pair={entry.pair} />;
  return 'heading' in entry ? <h2 className="part-of-changes">{entry.heading}</h2> : null;
}
