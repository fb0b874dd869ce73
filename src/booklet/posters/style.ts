import { pairGap } from '../pages/check-pictures.tsx';
import { overview, type Grid } from './overview-layout.ts';
import { digitShare, posterMargin, posterSheets, type PosterPaper } from './sheet.ts';
import { groupGap, innerGap, turned, wall } from './wall-layout.ts';

const ground = `
html, body { margin: 0; padding: 0; }
body { color: #000; -webkit-print-color-adjust: exact; }
h1, p, ul, ol { margin: 0; padding: 0; font-weight: 400; }
ul, ol { list-style: none; }
svg { display: block; flex: none; }
.apart { unicode-bidi: isolate; white-space: nowrap; }
b { font-weight: 700; }
.page { box-sizing: border-box; break-after: page; }
.page:last-child { break-after: auto; }
.picture { flex: none; position: relative; }
`;

/** Style of the wall edition: all lengths are those of A4, times the page's scale. */
export function wallStyle(paper: PosterPaper): string {
  const { scale } = posterSheets[paper];
  const mm = (length: number): string => `${Math.round(length * scale * 1000) / 1000}mm`;
  const size = (turn: 'lying' | 'upright'): string => `${turned(paper, turn).width}mm ${turned(paper, turn).height}mm`;
  const numeral = wall.numeral / digitShare;
  return `${ground}
@page lying { size: ${size('lying')}; margin: 0; }
@page upright { size: ${size('upright')}; margin: 0; }
.lying { page: lying; }
.upright { page: upright; }
.page { padding: ${mm(posterMargin)}; }
.sheet { height: 100%; display: grid; gap: ${mm(wall.gap)}; }
.lying .sheet { grid-template: 1fr ${mm(wall.strip)} / ${mm(wall.column)} 1fr; }
.upright .sheet { grid-template: ${mm(wall.row)} 1fr ${mm(wall.strip)} / 1fr; }
.lying .strip { grid-column: 1 / -1; }
.head { display: flex; gap: ${mm(4)}; min-height: 0; }
.lying .head { flex-direction: column; }
.upright .head { align-items: flex-start; gap: ${mm(10)}; }
.numeral { font-size: ${mm(numeral)}; font-weight: 700; line-height: ${mm(wall.numeral + 4)}; height: ${mm(wall.numeral + 4)}; letter-spacing: -0.02em; font-variant-numeric: tabular-nums; }
.overall { font-size: ${mm(6)}; line-height: ${mm(9)}; }
.lying .overall { white-space: normal; }
.print { font-size: ${mm(4)}; line-height: ${mm(6)}; }
.parts { display: flex; gap: ${mm(3)} ${mm(8)}; }
.lying .parts { flex-direction: column; }
.upright .parts { flex-wrap: wrap; align-items: center; min-height: ${mm(wall.row)}; }
.parts li { display: flex; flex-wrap: wrap; align-items: center; gap: 0 ${mm(2)}; }
.parts b { font-size: ${mm(9.5)}; line-height: ${mm(12)}; }
.counted { display: flex; flex-direction: column; font-size: ${mm(5)}; line-height: ${mm(6.5)}; }
.view { display: flex; flex-direction: column; align-items: center; justify-content: center; gap: ${mm(wall.between)}; min-width: 0; min-height: 0; }
.view.beside { flex-direction: row; }
.strip { display: flex; align-items: center; gap: ${mm(groupGap)}; }
.strip li { display: flex; gap: ${mm(innerGap)}; align-items: center; }
.strip .check { gap: ${pairGap * scale}mm; margin-inline-start: auto; }
.measure { font-size: ${mm(8)}; font-weight: 700; }
.strip .poster-foot { flex-direction: column; align-self: flex-end; align-items: flex-end; margin-inline-start: auto; }
.strip .check + .poster-foot { margin-inline-start: 0; }
`;
}

/** Style of the overview. */
export function overviewStyle(paper: PosterPaper, { columns, cell }: Grid): string {
  const { width, height } = posterSheets[paper];
  return `${ground}
@page { size: ${width}mm ${height}mm; margin: 0; }
.page { padding: ${posterMargin}mm; }
.sheet { height: 100%; }
.head { display: flex; align-items: center; gap: 6mm; height: ${overview.head}mm; box-sizing: border-box; padding-bottom: 3mm; }
.overall { font-size: 12pt; }
.print { font-size: 10pt; margin-inline-start: auto; }
.signs { display: flex; gap: 2mm; }
.cells { display: grid; grid-template-columns: repeat(${columns}, ${cell.width}mm); grid-auto-rows: ${cell.height}mm; gap: ${overview.gap}mm; }
.cell { display: flex; flex-direction: column; align-items: center; position: relative; }
.cell::before { content: ''; position: absolute; inset-block-start: -${overview.gap / 2}mm; inset-inline: -${overview.gap / 2}mm; border-top: 0.25mm solid; }
.cell.in-run::before { border-top-width: 1mm; }
.line { align-self: stretch; display: flex; align-items: center; gap: 1.5mm; height: ${overview.line}mm; flex: none; }
.line .glyph { margin-inline-start: auto; }
.line .numeral { font-size: ${overview.numeral / digitShare}mm; line-height: 1; }
.line .times { font-size: 10pt; line-height: 1; }
`;
}
