import { bandPad, countHeight, numeralHeight, timesHeight } from './bands.ts';
import { sourceWidth } from './colophon.tsx';
import { pairGap } from './check-pictures.tsx';
import { barsGap, pieceHeight, piecesHead } from './cut-lengths.tsx';
import { countLine, over } from './parts-list.tsx';
import { plateGap } from './plates.tsx';
import { captionSize, lineHeight, sheets, textSize } from './sheet.ts';
import { innerGap } from './step-strip.tsx';
import { narrowStyle } from './narrow-style.ts';
import type { Paper } from './types.ts';

const { margin, gutter, main } = sheets.a4;

/** Width of hairlines and of the line along a run, mm (ISO 128 line group 0.5). */
const hair = 0.25;
const bold = 0.5;

const ground = `
@page { margin: 0; }
html, body { margin: 0; padding: 0; }
body { color: #000; font-size: calc(${textSize}pt * var(--text-scale)); line-height: ${lineHeight}mm; font-kerning: normal; -webkit-print-color-adjust: exact; }
h1, h2, p, ul, dl, dd, table { margin: 0; padding: 0; font-weight: 400; }
ul { list-style: none; }
table { border-collapse: collapse; }
th { font-weight: 400; text-align: start; }
svg { display: block; flex: none; }
.apart { unicode-bidi: isolate; white-space: nowrap; }
.page { position: relative; box-sizing: border-box; break-after: page; }
.page:last-child { break-after: auto; }
.sheet { height: 100%; }
.main { padding-inline-start: ${margin + gutter}mm; }
.picture { position: relative; flex: none; }
.foot { position: absolute; bottom: 5mm; height: ${lineHeight}mm; display: flex; gap: 4mm; align-items: end; padding-inline-start: ${margin + gutter}mm; font-size: 10pt; }
.foot .folio { position: absolute; inset-inline-start: 0; width: ${margin}mm; }
.foot .unproved { display: flex; align-items: end; gap: 2mm; }
.foot .mark { margin-inline-start: auto; padding-bottom: 0.8mm; }
.chapter { font-size: 22pt; font-weight: 700; line-height: 11mm; }
.chapter .glyph { margin-top: -1mm; }
.heading { display: flex; align-items: flex-start; justify-content: space-between; gap: 8mm; }
.looked-at { display: flex; align-items: center; gap: 3mm; height: 14mm; margin-top: -1.5mm; }
.looked-at span { max-width: 52mm; }
.looked-at b { white-space: nowrap; font-size: 22pt; line-height: 11mm; font-variant-numeric: tabular-nums; }
.defer { font-size: calc(12pt * var(--text-scale)); line-height: 6mm; border-top: ${hair}mm solid; padding-top: 3mm; }
`;

const coverStyle = `
.cover { height: 100%; display: flex; flex-direction: column; padding-bottom: 4mm; box-sizing: border-box; }
.cover .name { font-size: 40pt; font-weight: 700; line-height: 18mm; padding-inline-start: ${margin + gutter}mm; padding-top: 10mm; }
.cover .view { flex: 1; display: flex; align-items: center; justify-content: center; padding-inline-start: ${margin + gutter}mm; }
.cover .facts { display: flex; align-items: end; gap: 6mm; border-top: ${hair}mm solid; padding-top: 5mm; margin-inline-start: ${margin + gutter}mm; }
.cover .size { font-size: 14pt; font-weight: 700; line-height: 7mm; }
.cover .overall { font-size: 14pt; line-height: 7mm; }
.cover .print { margin-inline-start: auto; text-align: end; }
`;

const beforeStyle = `
.crew { display: flex; gap: 14mm; padding-bottom: 6mm; }
.crew div { font-size: calc(12pt * var(--text-scale)); display: flex; align-items: center; gap: 4mm; }
.crew .time p { font-weight: 700; }
ul.tools { display: flex; flex-wrap: wrap; gap: 5mm 3mm; border-top: ${hair}mm solid; padding: 6mm 0; }
ul.tools li { width: 30.6mm; font-size: calc(11pt * var(--text-scale)); display: flex; flex-direction: column; align-items: center; gap: 1.5mm; text-align: center; line-height: 5mm; }
ul.cautions { border-top: ${hair}mm solid; padding: 5mm 0; }
ul.cautions.words { display: grid; grid-template-columns: 1fr 1fr; gap: 4.5mm 6mm; font-size: calc(11pt * var(--text-scale)); }
ul.cautions.words li { display: flex; align-items: center; gap: 4mm; min-height: 19mm; }
ul.cautions.pictures { display: flex; flex-wrap: wrap; gap: 9mm 12mm; }
`;

const listStyle = `
.part-row { display: flex; align-items: flex-end; }
.part-row li { display: flex; flex-direction: column; align-items: flex-start; }
.part-row .told { margin-top: ${over}mm; }
.part-row .told p { line-height: ${lineHeight}mm; }
.part-row .counted { display: flex; gap: 2.5mm; align-items: baseline; height: ${countLine}mm; font-size: 12pt; white-space: nowrap; }
.part-row .counted b { font-size: 16pt; }
.part-scale { box-sizing: border-box; padding-top: 1mm; }
.scale-bar { display: flex; align-items: center; gap: 3mm; }
.lettered { display: flex; align-items: center; justify-content: space-between; }
.sizes { border-bottom: ${hair}mm solid; font-size: 12pt; }
.sizes td, .sizes th { padding: 0; vertical-align: middle; }
.sizes tbody { border-top: ${hair}mm solid; }
.sizes thead th { vertical-align: bottom; padding-bottom: 1.5mm; }
.sizes .letter { font-weight: 700; width: 9mm; }
.sizes thead, .sizes .what { font-size: ${textSize}pt; }
.sizes .what, .sizes .letter:has(+ .what) { padding-top: 2mm; }
.sizes .figure { text-align: center; width: var(--column); height: 10mm; font-variant-numeric: tabular-nums; }
.sizes .figure .size-mark, .sizes .pointer { margin: 0 auto 1mm; }
.sizes .this { font-weight: 700; background: #e8e8e8; }
.plates .picture { margin-bottom: ${plateGap}mm; }
.lengths .picture { margin-bottom: ${barsGap}mm; }
.pieces { border-bottom: ${hair}mm solid; }
.pieces tbody tr { border-top: ${hair}mm solid; height: ${pieceHeight}mm; }
.pieces thead { height: ${piecesHead}mm; }
.pieces thead th { text-align: center; font-weight: 700; }
.pieces .piece { width: 84mm; }
.pieces .piece .picture { display: inline-block; vertical-align: middle; margin: 0; margin-inline-end: 5mm; min-width: 0; }
.pieces .figure { width: 36mm; text-align: center; font-size: 14pt; font-weight: 700; }
`;

const stepStyle = `
.band { position: relative; box-sizing: border-box; padding-block: ${bandPad - hair}mm ${bandPad}mm; display: grid; grid-template-columns: ${margin}mm ${main}mm; column-gap: ${gutter}mm; align-content: start; border-top: ${hair}mm solid; }
.steps > .band:first-child { border-top-color: transparent; }
.in-run::before { content: ''; position: absolute; inset-block: 0; inset-inline-start: -2.5mm; border-inline-start: ${bold}mm solid; }
.band h2 { grid-column: 1 / -1; display: grid; font-size: calc(${captionSize}pt * var(--text-scale)); align-items: start; grid-template-columns: subgrid; }
.numeral { position: absolute; inset-block-start: ${bandPad - 1.6}mm; inset-inline-start: 0; font-size: 32pt; font-weight: 700; line-height: ${numeralHeight}mm; height: ${numeralHeight}mm; margin-top: -1mm; font-variant-numeric: tabular-nums; }
.caption { grid-column: 2; }
.new-parts { padding-top: ${numeralHeight}mm; }
.new-parts li { display: flex; flex-direction: column; align-items: flex-start; }
.new-parts b { font-size: 18pt; line-height: ${countHeight}mm; height: ${countHeight}mm; }
.new-parts .times { flex-direction: row; align-items: center; gap: 1mm; height: ${timesHeight}mm; font-size: 14pt; font-weight: 700; }
.new-parts .length { font-size: 10.5pt; line-height: ${lineHeight}mm; white-space: nowrap; }
.work { grid-column: 2; display: flex; flex-direction: column; align-items: center; }
.strip { align-self: stretch; display: flex; align-items: center; }
.strip li { display: flex; gap: ${innerGap}mm; align-items: center; }
.strip .check { gap: ${pairGap}mm; margin-inline-start: auto; }
.measure { font-size: 14pt; font-weight: 700; }
.announced { grid-column: 2; display: flex; align-items: center; gap: 5mm; height: 100%; }
.turn, .run, .finished { align-content: stretch; font-size: calc(12pt * var(--text-scale)); }
.finished > .glyph { align-self: center; }
.repeat { font-size: 32pt; font-weight: 700; line-height: 14mm; align-self: center; }
`;

const endStyle = `
.last-checks ul { display: grid; grid-template-columns: 1fr 1fr; column-gap: 6mm; }
.last-checks .pair { display: flex; gap: ${pairGap}mm; align-items: center; }
.last-checks p { margin-top: 1mm; line-height: 5mm; }
.load .safe { display: grid; grid-template-columns: 1fr 1fr; column-gap: 10mm; border-top: ${hair}mm solid; padding-block: 6mm; }
.load .told { display: flex; flex-direction: column; justify-content: flex-end; align-items: center; gap: 5mm; }
.load .told p { min-height: 18mm; font-size: calc(12pt * var(--text-scale)); line-height: 6mm; }
.load .only-for { grid-column: 1 / -1; display: grid; grid-template-columns: auto 1fr; column-gap: 10mm; padding-top: 5mm; }
.load .pair { display: flex; gap: ${pairGap}mm; align-items: center; }
.load .figures { display: flex; align-items: flex-end; gap: 4mm; }
.load .told .apart { font-weight: 700; }
.colophon dl { padding-bottom: 5mm; }
.colophon dl div { display: grid; grid-template-columns: 42mm 1fr; column-gap: 4mm; }
.colophon > p { margin-bottom: ${lineHeight}mm; }
.findings { width: ${main}mm; table-layout: fixed; border-bottom: ${hair}mm solid; margin-top: 4mm; }
.findings thead th { font-weight: 700; height: 8mm; }
.findings tbody tr { border-top: ${hair}mm solid; vertical-align: top; }
.findings td, .findings th { box-sizing: border-box; padding: 1mm 0; padding-inline-end: 3mm; }
.findings th:nth-child(1) { width: ${sourceWidth}mm; }
.findings th:nth-child(2) { width: 30mm; }
.findings th:nth-child(3) { width: 24mm; }
.findings .source { display: block; font-size: 10pt; }
.findings sup { font-size: inherit; line-height: 0; }
html:dir(rtl) .findings .source { text-align: right; }
`;

/**
 * The style of all pages. Margins and columns mirror with the language's direction; `textScale` enlarges
 * running text where a script's letters are small.
 */
export function pageStyle(textScale: number, paper: Paper): string {
  const narrow = sheets[paper].narrow ? [narrowStyle(sheets[paper])] : [];
  return [`body { --text-scale: ${textScale}; }`, ground, coverStyle, beforeStyle, listStyle, stepStyle, endStyle, ...narrow].join('\n');
}
