import { countHeight } from './bands.ts';
import { factName, narrowNameWidth } from './colophon.tsx';
import { besideGap } from './last-checks.tsx';
import { countGap, numeralRoom, partsGap, timesWidth } from './narrow-head.ts';
import type { Sheet } from './sheet.ts';

/** Columns of a finding's figure and limit, mm. */
const figureWidth = 30;
const limitWidth = 27;

/** What is otherwise on a page without a column for numerals: it stands after the style of all pages. */
export function narrowStyle({ main }: Sheet): string {
  return `
.heading { gap: 6mm; }
.chapter { white-space: nowrap; flex: none; }
.main, .cover .name, .cover .view, .foot { padding-inline-start: 0; }
.foot .folio { position: static; width: auto; }
.chapter { font-size: 18pt; }
.cover .name { font-size: 28pt; line-height: 13mm; padding-top: 4mm; }
.cover .facts { margin-inline-start: 0; gap: 4mm; }
.cover .size, .cover .overall { font-size: 12pt; white-space: nowrap; }
ul.tools li { width: 30.5mm; }
.lettered { flex-direction: column; align-items: center; gap: 3mm; }
.sizes .named { width: 52mm; font-size: 10.5pt; line-height: 5mm; padding-inline-end: 2mm; }
.sizes .figure { height: 11mm; }
.pieces .piece { width: ${main - 2 * 32}mm; }
.pieces .figure { width: 32mm; }
.band { grid-template-columns: ${main}mm; }
.band h2, .band div:has(> .numeral) { display: block; padding-inline-start: ${numeralRoom}mm; }
.caption { display: block; }
.new-parts { box-sizing: border-box; padding-top: 0; padding-inline-start: ${numeralRoom}mm; display: flex; flex-wrap: wrap; column-gap: ${partsGap}mm; align-content: flex-start; }
.new-parts li { flex-direction: row; align-items: center; gap: ${countGap}mm; }
.new-parts b { line-height: ${countHeight}mm; }
.new-parts .times { width: ${timesWidth}mm; }
.work { grid-column: 1; }
.run, .turn, .finished { grid-template-columns: auto 1fr; }
.last-checks ul { display: block; }
.last-checks li { display: flex; align-items: center; gap: ${besideGap}mm; }
.last-checks .pair { flex: none; }
.last-checks p { margin-top: 0; line-height: 5.5mm; }
.load .safe { column-gap: 6mm; padding-block: 3mm; }
.load .only-for { column-gap: 6mm; }
.colophon dl div { grid-template-columns: ${factName.narrow - 4}mm 1fr; }
.findings { width: ${main}mm; }
.findings tbody .below { border-top: 0; }
.findings tbody tr:not(.below) > * { padding-bottom: 0; }
.findings tbody .below > * { padding-top: 0; padding-bottom: 1mm; }
.findings th:nth-child(1) { width: ${narrowNameWidth}mm; }
.findings th:nth-child(2) { width: ${figureWidth}mm; }
.findings th:nth-child(3) { width: ${limitWidth}mm; }
`;
}
