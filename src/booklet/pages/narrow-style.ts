import { countHeight } from './bands.ts';
import { crewGap } from './before.tsx';
import { factNameWidth, findingColumns } from './colophon.tsx';
import { nameLines, namePad, nameSizes, printWidth, sizeSize } from './cover.tsx';
import { pieceFigures } from './cut-lengths.tsx';
import { leastRow, namedColumn, namedGap, namedLine, namedSize, overTable } from './dimensions.tsx';
import { countGap, numeralRoom, partsGap, timesWidth } from './narrow-head.ts';
import { onlyForWidth } from './only-for.tsx';
import { heading, type Sheet } from './sheet.ts';
import { toldColumnGap } from './told.ts';

/** What is otherwise on a page without a column for numerals: it stands after the style of all pages. */
export function narrowStyle({ main }: Sheet): string {
  return [groundStyle, listStyle(main), stepStyle(main), endStyle].join('');
}

const groundStyle = `
.heading { gap: ${heading.narrow.gap}mm; }
.chapter { font-size: ${heading.narrow.size}pt; --leading: ${heading.narrow.leading}mm; }
.looked-at .only { max-width: none; }
.main, .cover .name, .cover .view, .foot { padding-inline-start: 0; }
.foot .folio { position: static; width: auto; }
.foot > span:not(.unproved) { white-space: nowrap; }
.cover .name { font-size: ${nameSizes.narrow.one}pt; --leading: ${nameLines.narrow.one}mm; padding-top: ${namePad.narrow}mm; }
.cover.several .name { font-size: ${nameSizes.narrow.several}pt; --leading: ${nameLines.narrow.several}mm; }
.cover .carries { margin-inline-start: 0; }
.cover .facts { margin-inline-start: 0; gap: 4mm; }
.cover .languages { margin-inline-start: 0; }
.cover .size, .cover .overall { font-size: ${sizeSize.narrow}pt; }
.cover .print { max-width: ${printWidth.narrow}mm; }
.crew { gap: ${crewGap.narrow}mm; }
`;

const listStyle = (main: number): string => `
.lettered { flex-direction: column; align-items: center; gap: ${overTable}mm; }
.sizes .named { width: ${namedColumn}mm; font-size: calc(${namedSize}pt * var(--text-scale)); --leading: ${namedLine}mm; padding-inline-end: ${namedGap}mm; }
.sizes .figure { height: ${leastRow}mm; }
.size-names:not(.several) { grid-template-columns: 1fr 1fr; }
.names .in-languages.under > .in-language { text-align: -webkit-match-parent; }
.pieces .piece { width: ${main - 2 * pieceFigures.narrow}mm; }
.pieces .figure { width: ${pieceFigures.narrow}mm; }
`;

const stepStyle = (main: number): string => `
.band { grid-template-columns: ${main}mm; }
.band h2, .band div:has(> .numeral) { display: block; padding-inline-start: ${numeralRoom}mm; }
.caption { display: block; }
.new-parts { box-sizing: border-box; padding-top: 0; padding-inline-start: ${numeralRoom}mm; display: flex; flex-wrap: wrap; column-gap: ${partsGap}mm; align-content: flex-start; }
.new-parts li { flex-direction: row; align-items: center; gap: ${countGap}mm; }
.new-parts b { --leading: ${countHeight}mm; }
.new-parts .times, .new-parts .round { width: ${timesWidth}mm; }
.work { grid-column: 1; }
.run, .finished { grid-template-columns: auto 1fr; }
`;

const endStyle = `
.load .safe { column-gap: ${toldColumnGap.narrow}mm; }
.load .only-for:not(.alone) { grid-template-columns: ${onlyForWidth.narrow}mm 1fr; column-gap: ${toldColumnGap.narrow}mm; }
.colophon dl div { grid-template-columns: ${factNameWidth.narrow}mm 1fr; }
.findings { width: 100%; }
.findings tbody .below { border-top: 0; }
.findings tbody tr:not(.below) > * { padding-bottom: 0; }
.findings tbody .below > * { padding-top: 0; padding-bottom: 1mm; padding-inline-end: 0; }
.findings th:nth-child(1) { width: ${findingColumns.narrow[0]}mm; }
.findings th:nth-child(2) { width: ${findingColumns.narrow[1]}mm; }
.findings th:nth-child(3) { width: ${findingColumns.narrow[2]}mm; }
`;
