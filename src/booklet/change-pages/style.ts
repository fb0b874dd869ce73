import { between, COLUMNS, columnEnd, framePad, headingLine, headingPad, headingSize, rowPad, under } from './measures.ts';

const hair = 0.25;
const percent = (share: number): string => `${share * 100}%`;

/** What the pages of what changed add to the style of all pages. */
export const changePageStyle = `
.foot .print { margin-inline-start: auto; }
.prints { padding: 3mm 0 1mm; }
.prints div { display: grid; grid-template-columns: ${percent(COLUMNS.two[0])} 1fr; }
.prints dd { font-weight: 700; }
.changed { width: 100%; table-layout: fixed; }
.changed th, .changed td { padding: 0; padding-top: ${rowPad / 2}mm; padding-bottom: ${rowPad / 2 - hair}mm; padding-inline-end: ${columnEnd}mm; vertical-align: top; text-align: start; border-bottom: ${hair}mm solid #777; }
.changed tbody th { font-weight: 700; }
.changed.three th:first-child { width: ${percent(COLUMNS.three[0])}; }
.changed.two th:first-child { width: ${percent(COLUMNS.two[0])}; }
.part-of-changes { font-size: calc(${headingSize}pt * var(--text-scale)); font-weight: 700; --leading: ${headingLine}mm; padding-top: ${headingPad}mm; }
.changed thead th { border: 0; padding-top: ${headingPad}mm; padding-bottom: 0; vertical-align: baseline; --leading: ${headingLine}mm; }
.changed thead .part-of-changes { white-space: nowrap; }
.pair h3 { margin: 0; font-size: inherit; font-weight: 700; }
.pair .sides { display: grid; grid-template-columns: 1fr 1fr; column-gap: ${between}mm; padding-bottom: ${under}mm; }
.pair figure { margin: 0; }
.pair .frame { border: ${hair}mm solid #777; padding: ${framePad}mm; min-height: 8mm; }
`;
