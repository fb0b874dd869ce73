import { lineHeight, sheets } from '../pages/sheet.ts';

const { margin, gutter } = sheets.a4;
const hair = 0.25;

/** What the pages of a cut plan add to the style of all pages. */
export const cutPageStyle = `
.cut-summary .ordered { padding: 3mm 0 2mm; font-size: calc(14pt * var(--text-scale)); --leading: 7.5mm; }
.cut-summary .ordered b { display: inline-block; min-width: 14mm; padding-inline-end: 2mm; }
.cut-table { width: 100%; border-bottom: ${hair}mm solid; margin-top: 5mm; }
.cut-table th, .cut-table td { padding: 0.7mm 0; padding-inline-end: 3mm; vertical-align: top; text-align: start; }
.cut-table thead th { font-weight: 700; vertical-align: bottom; }
.cut-table tbody tr { border-top: ${hair}mm solid; }
.cut-table .number { text-align: end; font-variant-numeric: tabular-nums; white-space: nowrap; padding-inline-end: 6mm; }
.cut-table .total th, .cut-table .total td { font-weight: 700; }
.pieces-by-letter .letter { font-weight: 700; font-size: 13pt; width: 18mm; }
.pieces-by-letter td:nth-child(2) { width: 40mm; white-space: nowrap; }
.pieces-by-letter td:nth-child(3) { width: 16mm; }
.cut-table .use { --leading: 6mm; }
.cut-head { display: flex; align-items: center; gap: 4mm; height: 17mm; }
.cut-head .times { width: ${margin + gutter - 4}mm; font-size: 30pt; font-weight: 700; --leading: 13mm; white-space: nowrap; }
.cut-head .chapter { margin: 0; }
.cut-head .which { font-size: 14pt; }
.cut-sheet .rule { font-size: calc(12pt * var(--text-scale)); --leading: 6mm; padding-bottom: 3mm; }
.cut-sheet .keep th { width: 34mm; font-weight: 700; }
.cut-sheet .keep td:nth-child(2) { width: 36mm; white-space: nowrap; }
.foot .print { margin-inline-start: auto; }
.cut-sheet .picture { margin-bottom: 4mm; }
.cut-note { padding-top: 5mm; }
.tally { margin-top: 2mm; }
html:dir(rtl) .tally { transform: scaleX(-1); }
.cut-cautions { border-top: ${hair}mm solid; margin-top: 6mm; padding-top: 4mm; }
.cut-cautions ul { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm 6mm; padding-bottom: 3mm; }
.cut-cautions li { display: flex; align-items: center; gap: 3mm; --leading: ${lineHeight}mm; }
`;
