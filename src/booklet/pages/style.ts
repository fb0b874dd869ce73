import { bandPad, countHeight, numeralHeight, roundHeight, timesHeight } from './bands.ts';
import type { Words } from '../words/index.ts';
import { crewGap, crewWhite, toolGap, toolLine, toolSize, toolWidth } from './before.tsx';
import { bareColumnGap, bareRowGap, cautionsPad, columnGap as cautionGap, deferLine, deferPad, deferSize, rowGap, signGap, signHeight } from './caution-list.tsx';
import { pairGap } from './check-pictures.tsx';
import { factGap, factNameWidth, factsPad, findingColumns, findingsHead, findingsPad } from './colophon.tsx';
import { carriesPad, coverFoot, factLine, factPad, nameLines, nameFoot, namePad, nameSizes, namesLine, namesPad, printWidth, sizeSize } from './cover.tsx';
import { barsGap, pieceFigures, pieceGap, pieceWidth, piecesHead } from './cut-lengths.tsx';
import { footWhite } from './foot.tsx';
import { letterWidth, namePad as lengthPad, namesPad as namesUnderPad } from './dimensions.tsx';
import { checkColumnGap, checkGap, checkLine, checkPictures } from './last-checks.tsx';
import { lookedGap, lookedLine, sentenceWidth } from './looked-at.tsx';
import { onlyForPad, onlyForWidth } from './only-for.tsx';
import { countLine, over } from './parts-list.tsx';
import { plateGap } from './plates.tsx';
import { lineScale } from './setting.ts';
import { captionSize, heading, lineHeight, sheets, textSize } from './sheet.ts';
import { sizeColumnGap, sizeGap, sizeRow, sizesPad } from './size-names.tsx';
import { innerGap } from './strip.ts';
import { leastWords, safePad, toldColumnGap, toldGap, toldLine, toldSize } from './told.ts';
import { columnGap } from './in-languages.tsx';
import { narrowStyle } from './narrow-style.ts';
import type { LaidFor } from '../papers/index.ts';

const { margin, gutter, main } = sheets.a4;

/** Width of hairlines and of the line along steps that are done several times, mm (ISO 128 line group 0.5). */
const hair = 0.25;
const bold = 0.5;

/** Figures stand on Latin's lines, whatever the language. */
const figures = ['.apart[dir=ltr]', '.numeral', '.new-parts b', '.new-parts .length', '.times', '.new-parts .round', '.repeat', '.looked-at b', '.counted',
  '.sizes td.figure', '.letter', '.pieces thead th', '.pieces .figure', '.overall', '.measure', '.folio', '.asked-at'];

const ground = `
@page { margin: 0; }
html, body { margin: 0; padding: 0; }
body { --line: 1; color: #000; font-size: calc(${textSize}pt * var(--text-scale)); --leading: ${lineHeight}mm; font-kerning: normal; -webkit-print-color-adjust: exact; }
h1, h2, p, ul, dl, dd, table { margin: 0; padding: 0; font-weight: 400; }
ul { list-style: none; }
table { border-collapse: collapse; }
th { font-weight: 400; text-align: start; }
svg { display: block; flex: none; }
.page :not(svg, svg *) { line-height: calc(var(--leading) * var(--line)); }
.apart { unicode-bidi: isolate; white-space: nowrap; }
.apart[dir=auto] { white-space: normal; }
${figures.map((figure) => `${figure}, ${figure} *`).join(', ')} { --line: 1; font-family: var(--figures, inherit); }
.in-languages.under, .in-languages.under > .in-language { display: block; text-align: -webkit-match-parent; }
.in-languages.beside { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); column-gap: ${columnGap}mm; text-align: start; }
.page { position: relative; box-sizing: border-box; break-after: page; }
.page:last-child { break-after: auto; }
.sheet { height: 100%; }
.main { padding-inline-start: ${margin + gutter}mm; }
.picture { position: relative; flex: none; }
.foot { position: absolute; bottom: ${footWhite}mm; min-height: ${lineHeight}mm; display: flex; gap: 4mm; align-items: end; padding-inline-start: ${margin + gutter}mm; font-size: 10pt; }
.foot .folio { position: absolute; inset-inline-start: 0; width: ${margin}mm; }
.foot .unproved { display: flex; align-items: end; gap: 2mm; }
.foot .mark { margin-inline-start: auto; padding-bottom: 0.8mm; }
.chapter { font-size: ${heading.wide.size}pt; font-weight: 700; --leading: ${heading.wide.leading}mm; }
.chapter .glyph { margin-top: -1mm; }
.heading { display: flex; align-items: flex-start; justify-content: space-between; gap: ${heading.wide.gap}mm; }
.heading:not(.alone) .chapter { white-space: nowrap; flex: none; }
.heading.alone { flex-direction: column; justify-content: flex-start; gap: 0; }
.heading.alone .chapter { align-self: stretch; }
.looked-at { display: flex; align-items: center; gap: ${lookedGap}mm; min-height: ${lookedLine}mm; margin-top: calc(-1 * var(--up)); }
.looked-at .only { max-width: ${sentenceWidth.wide}mm; }
.heading.alone .looked-at { margin-top: 0; }
.heading.alone .looked-at .only { max-width: none; }
.looked-at b { white-space: nowrap; font-size: 22pt; --leading: 11mm; font-variant-numeric: tabular-nums; }
.defer { font-size: calc(${deferSize}pt * var(--text-scale)); --leading: ${deferLine}mm; border-top: ${hair}mm solid; padding-top: ${deferPad}mm; }
`;

const coverStyle = `
.cover { height: 100%; display: flex; flex-direction: column; padding-bottom: ${coverFoot}mm; box-sizing: border-box; }
.cover .name { font-size: ${nameSizes.wide.one}pt; font-weight: 700; --leading: ${nameLines.wide.one}mm; padding-inline-start: ${margin + gutter}mm; padding-block: ${namePad.wide}mm ${nameFoot}mm; }
.cover.several .name { font-size: ${nameSizes.wide.several}pt; --leading: ${nameLines.wide.several}mm; }
.cover .view { flex: 1; display: flex; align-items: center; justify-content: center; padding-inline-start: ${margin + gutter}mm; }
.cover .carries { display: flex; align-items: center; gap: 6mm; padding-bottom: ${carriesPad}mm; margin-inline-start: ${margin + gutter}mm; }
.cover .facts { display: flex; align-items: end; gap: 6mm; border-top: ${hair}mm solid; padding-top: ${factPad}mm; margin-inline-start: ${margin + gutter}mm; }
.cover .size { font-size: ${sizeSize.wide}pt; font-weight: 700; --leading: ${factLine}mm; }
.cover .overall { font-size: ${sizeSize.wide}pt; --leading: ${factLine}mm; white-space: nowrap; }
/* Names in many scripts: their lines are all alike. */
.cover .languages, .cover .languages * { --leading: ${namesLine}mm; --line: 1; }
.cover .languages { padding-top: ${namesPad}mm; margin-inline-start: ${margin + gutter}mm; }
.cover .print { margin-inline-start: auto; text-align: end; max-width: ${printWidth.wide}mm; }
`;

const beforeStyle = `
.crew { display: flex; gap: ${crewGap.wide}mm; padding-bottom: ${crewWhite}mm; }
.crew div { font-size: calc(12pt * var(--text-scale)); display: flex; align-items: center; gap: 4mm; }
.crew .time p { font-weight: 700; }
ul.tools { display: flex; column-gap: ${toolGap.columns}mm; border-top: ${hair}mm solid; padding-top: ${toolGap.rows - hair}mm; }
ul.tools + ul.tools { border-top: 0; padding-top: ${toolGap.rows}mm; }
ul.tools.last { padding-bottom: ${toolGap.rows}mm; }
ul.tools li { width: ${toolWidth}mm; font-size: calc(${toolSize}pt * var(--text-scale)); display: flex; flex-direction: column; align-items: center; gap: ${toolGap.name}mm; text-align: center; --leading: ${toolLine}mm; }
ul.cautions { border-top: ${hair}mm solid; padding: ${cautionsPad}mm 0; }
ul.cautions.words { display: grid; grid-template-columns: 1fr 1fr; gap: ${rowGap}mm ${cautionGap}mm; font-size: calc(11pt * var(--text-scale)); }
ul.cautions.words.one { grid-template-columns: 1fr; }
ul.cautions.words li { display: flex; align-items: center; gap: ${signGap}mm; min-height: ${signHeight}mm; }
ul.cautions.words .says { flex: 1; }
ul.cautions.pictures { display: flex; flex-wrap: wrap; gap: ${bareRowGap}mm ${bareColumnGap}mm; }
`;

const listStyle = `
.part-row { display: flex; align-items: flex-end; }
.part-row li { display: flex; flex-direction: column; align-items: flex-start; }
.part-row .told { margin-top: ${over}mm; }
.part-row .told p { --leading: ${lineHeight}mm; }
.part-row .counted { display: flex; gap: 2.5mm; align-items: baseline; height: ${countLine}mm; font-size: 12pt; white-space: nowrap; }
.part-row .counted b { font-size: 16pt; }
.part-scale { box-sizing: border-box; padding-top: 1mm; }
.scale-bar { display: flex; align-items: center; gap: 3mm; }
.lettered { display: flex; align-items: center; justify-content: space-between; }
.sizes { border-bottom: ${hair}mm solid; font-size: 12pt; }
.sizes td, .sizes th { padding: 0; vertical-align: middle; }
.sizes tbody { border-top: ${hair}mm solid; }
.sizes thead th { vertical-align: bottom; padding-bottom: 1.5mm; }
.letter { font-weight: 700; }
.sizes .letter { width: ${letterWidth}mm; }
.size-names { display: grid; grid-template-columns: 1fr 1fr 1fr; column-gap: ${sizeColumnGap}mm; padding-top: ${sizesPad}mm; font-size: calc(${textSize}pt * var(--text-scale)); }
.size-names.several { grid-template-columns: 1fr; }
.size-names li { display: flex; align-items: center; gap: ${sizeGap}mm; min-height: ${sizeRow}mm; }
.size-names li > :last-child { flex: 1; }
.names { padding-top: ${namesUnderPad}mm; font-size: calc(${textSize}pt * var(--text-scale)); }
.names div { display: grid; grid-template-columns: ${letterWidth}mm 1fr; padding-bottom: ${lengthPad}mm; }
.sizes thead, .sizes .what { font-size: calc(${textSize}pt * var(--text-scale)); }
.sizes .what, .sizes .letter:has(+ .what) { padding-top: 2mm; }
.sizes .figure { text-align: center; width: var(--column); height: 10mm; font-variant-numeric: tabular-nums; }
.sizes .figure .size-mark, .sizes .pointer { margin: 0 auto 1mm; }
.sizes .this { font-weight: 700; background: #e8e8e8; }
.plates .picture { margin-bottom: ${plateGap}mm; }
.lengths .picture { margin-bottom: ${barsGap}mm; }
.pieces { border-bottom: ${hair}mm solid; }
.pieces tbody tr { border-top: ${hair}mm solid; }
.pieces thead { height: ${piecesHead}mm; }
.pieces thead th { text-align: center; font-weight: 700; }
.pieces .piece { width: ${pieceWidth}mm; }
.pieces .piece div:has(> .picture) { display: flex; align-items: center; gap: ${pieceGap}mm; }
.pieces .piece .picture { margin: 0; }
.pieces .figure { width: ${pieceFigures.wide}mm; text-align: center; font-size: 14pt; font-weight: 700; }
`;

const stepStyle = `
.band { position: relative; box-sizing: border-box; padding-block: ${bandPad - hair}mm ${bandPad}mm; display: grid; grid-template-columns: ${margin}mm ${main}mm; column-gap: ${gutter}mm; align-content: start; border-top: ${hair}mm solid; }
.steps > .band:first-child { border-top-color: transparent; }
.repeated::before { content: ''; position: absolute; inset-block: 0; inset-inline-start: -2.5mm; border-inline-start: ${bold}mm solid; }
.band h2 { grid-column: 1 / -1; display: grid; font-size: calc(${captionSize}pt * var(--text-scale)); align-items: start; grid-template-columns: subgrid; }
.numeral { position: absolute; inset-block-start: ${bandPad - 1.6}mm; inset-inline-start: 0; font-size: 32pt; font-weight: 700; --leading: ${numeralHeight}mm; height: ${numeralHeight}mm; margin-top: -1mm; font-variant-numeric: tabular-nums; }
.caption { grid-column: 2; }
.new-parts { padding-top: ${numeralHeight}mm; }
.new-parts li { display: flex; flex-direction: column; align-items: flex-start; }
.new-parts b { font-size: 18pt; --leading: ${countHeight}mm; height: ${countHeight}mm; }
.new-parts .round { flex-direction: row; align-items: center; gap: 1mm; height: ${roundHeight}mm; font-size: 13pt; font-weight: 700; }
.new-parts .times, .on-each .times { display: flex; flex-direction: row; align-items: center; gap: 1mm; height: ${timesHeight}mm; font-size: 18pt; font-weight: 700; }
.new-parts .length { font-size: 10.5pt; --leading: ${lineHeight}mm; white-space: nowrap; }
.on-each { position: relative; width: ${main}mm; display: flex; justify-content: center; }
.on-each .times { position: absolute; top: 0; inset-inline-start: -${margin + gutter}mm; }
.on-each::before { content: ''; position: absolute; inset-block: 0; inset-inline-start: -${margin + gutter + 2.5}mm; border-inline-start: ${bold}mm solid; }
.work { grid-column: 2; display: flex; flex-direction: column; align-items: center; }
.strip { align-self: stretch; display: flex; align-items: center; }
.strip li { display: flex; gap: ${innerGap}mm; align-items: center; }
.strip.parted { flex-wrap: wrap; align-content: space-between; }
.strip.parted .check { flex-basis: 100%; justify-content: flex-end; }
.strip.low .people { margin-inline-end: auto; }
.strip.low .check { flex-basis: auto; flex-grow: 1; }
.strip .check { gap: ${pairGap}mm; margin-inline-start: auto; }
.measure { font-size: 14pt; font-weight: 700; }
.announced { grid-column: 2; display: flex; align-items: center; gap: 5mm; height: 100%; }
.run, .finished { align-content: stretch; font-size: calc(12pt * var(--text-scale)); }
.finished > .glyph { align-self: center; }
.repeat { font-size: 32pt; font-weight: 700; --leading: 14mm; align-self: center; }
`;

const endStyle = `
.last-checks ul { display: grid; grid-template-columns: 1fr 1fr; column-gap: ${checkColumnGap}mm; }
.last-checks .pair { display: flex; gap: ${pairGap}mm; align-items: center; }
.last-checks .asked-at { display: block; font-size: 14pt; --leading: 7mm; font-variant-numeric: tabular-nums; }
.last-checks p { margin-top: ${checkGap}mm; --leading: ${checkLine}mm; }
.last-checks.beside ul { grid-template-columns: 1fr; }
.last-checks.beside li { display: grid; grid-template-columns: ${checkPictures}mm 1fr; align-items: center; align-content: center; }
.last-checks.beside p { margin-top: 0; }
.load .safe { display: grid; grid-template-columns: 1fr 1fr; column-gap: ${toldColumnGap.wide}mm; border-top: ${hair}mm solid; padding-block: ${safePad}mm; }
.load .safe.alone, .load .only-for.alone { grid-template-columns: 1fr; }
.load .told { display: flex; flex-direction: column; justify-content: flex-end; align-items: center; gap: ${toldGap}mm; }
.load .told p { min-height: ${leastWords}mm; font-size: calc(${toldSize}pt * var(--text-scale)); --leading: ${toldLine}mm; }
.load .only-for { display: grid; grid-template-columns: ${onlyForWidth.wide}mm 1fr; column-gap: ${toldColumnGap.wide}mm; padding-bottom: ${onlyForPad}mm; }
.load .pair { display: flex; gap: ${pairGap}mm; align-items: center; }
.load .figures { display: flex; align-items: flex-end; gap: 4mm; }
.load .told .apart { font-weight: 700; }
.colophon dl { padding-bottom: ${factsPad}mm; }
.colophon dl div { display: grid; grid-template-columns: ${factNameWidth.wide}mm 1fr; column-gap: ${factGap}mm; }
.colophon > p { margin-bottom: ${lineHeight}mm; }
.findings { width: ${main}mm; table-layout: fixed; border-bottom: ${hair}mm solid; margin-top: ${findingsPad}mm; }
.findings thead th { font-weight: 700; height: ${findingsHead}mm; vertical-align: top; }
.findings tbody tr { border-top: ${hair}mm solid; vertical-align: top; }
.findings td, .findings th { box-sizing: border-box; padding: 1mm 0; padding-inline-end: 3mm; }
.findings th:nth-child(1) { width: ${findingColumns.wide[0]}mm; }
.findings th:nth-child(2) { width: ${findingColumns.wide[1]}mm; }
.findings th:nth-child(3) { width: ${findingColumns.wide[2]}mm; }
.findings th:last-child, .findings td:last-child { padding-inline-end: 0; }
.findings .source { --line: 1; display: block; font-size: 10pt; }
.page .findings sup { font-size: inherit; line-height: 0; }
html:dir(rtl) .findings .source { text-align: right; }
`;

/**
 * The style of all pages. Margins and columns mirror with the first language's direction; its `textScale` enlarges
 * running text where a script's letters are small. Lines stand as far apart as each language needs.
 */
export function pageStyle(languages: readonly Words[], paper: LaidFor): string {
  const scales = languages.map((words) => `:lang(${words.lang}) { --line: ${lineScale(words)}; }`);
  const narrow = sheets[paper].narrow ? [narrowStyle(sheets[paper])] : [];
  return [`body { --text-scale: ${languages[0]?.about.textScale ?? 1}; }`, ...scales, ground, coverStyle, beforeStyle, listStyle, stepStyle, endStyle, ...narrow].join('\n');
}
