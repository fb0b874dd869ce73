import { sheets } from '../pages/sheet.ts';

const { margin, gutter, main } = sheets.a4;
const hair = 0.25;

/** The style of a workshop pack, after that of the booklet's pages. */
export const workshopStyle = `
.row { box-sizing: border-box; }
.foot .print { margin-inline-start: auto; }
.row > h2 { font-size: 14pt; font-weight: 700; --leading: 7mm; padding-top: 4mm; }
.pack-cover { height: 100%; display: flex; flex-direction: column; }
.pack-cover .name { font-size: 34pt; font-weight: 700; --leading: 16mm; padding: 6mm 0 4mm; padding-inline-start: ${margin + gutter}mm; }
.pack-cover .views { display: flex; flex-wrap: wrap; gap: 6mm; align-items: flex-end; justify-content: center; }
.pack-cover .view { display: flex; flex-direction: column; align-items: center; text-align: center; }
.pack-cover .view p { padding-top: 2mm; }
.pack-cover .facts { padding-top: 8mm; }
.pack-cover .facts div { display: grid; grid-template-columns: 80mm 1fr; --leading: 8mm; border-top: ${hair}mm solid; font-size: calc(12pt * var(--text-scale)); }
.pack-cover .facts dd { font-weight: 700; }
.pack-cover .end { margin-top: auto; display: flex; flex-direction: column; gap: 4mm; padding-bottom: 3mm; }
.danger { display: flex; align-items: center; }
.danger .signs { display: flex; }
.columns { display: grid; grid-template-columns: ${main - 90}mm 30mm 30mm 30mm; align-items: center; height: 100%; margin-inline-start: ${margin + gutter}mm; border-bottom: ${hair}mm solid; box-sizing: border-box; }
.columns b { text-align: center; }
.columns .thing { display: flex; align-items: center; gap: 4mm; }
.counted { display: flex; justify-content: space-between; }
.job { display: flex; align-items: center; gap: 4mm; height: 100%; box-sizing: border-box; }
.job .name { flex: 0 0 52mm; }
.job .how { flex: 1; }
.timed { display: grid; grid-template-columns: ${margin}mm ${main}mm; column-gap: ${gutter}mm; height: 100%; align-content: start; }
.timed.begins { border-top: ${hair}mm solid; padding-top: 3mm; box-sizing: border-box; }
.timed .glyphs { display: flex; flex-wrap: wrap; }
.work-head { display: grid; grid-template-columns: ${margin}mm ${main}mm; column-gap: ${gutter}mm; border-top: ${hair}mm solid; height: 100%; align-items: center; box-sizing: border-box; }
.work-head .numbers { font-size: 10.5pt; --leading: 4.4mm; }
.work-head .numbers .apart { white-space: normal; }
.work-head .what { display: flex; align-items: center; gap: 4mm; }
.work-head h3 { margin: 0; font-size: calc(11pt * var(--text-scale)); font-weight: 700; flex: 1; }
.work-head .needs { display: flex; gap: 2mm; align-items: center; }
.note { display: flex; }
.note .sign { flex: none; }
.note em { font-style: normal; font-weight: 700; }
.mistake { display: flex; align-items: center; height: 100%; }
.mistake .pair { display: flex; gap: 4.5mm; align-items: center; }
.mistake .where { font-size: 10pt; }
.checks { display: flex; height: 100%; }
.to-sign { display: flex; align-items: center; height: 100%; }
.to-sign .box { margin-inline-end: 4mm; }
.to-sign .right { flex: none; }
.to-sign .box { flex: none; box-sizing: border-box; width: 6.5mm; height: 6.5mm; border: 0.5mm solid; }
.fields { display: flex; gap: 8mm; height: 100%; align-items: flex-end; padding-bottom: 2mm; box-sizing: border-box; }
.fields span { flex: 1; border-top: ${hair}mm solid; padding-top: 1mm; --leading: 5mm; font-size: 10pt; }
`;
