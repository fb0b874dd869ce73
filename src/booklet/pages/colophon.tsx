import { Fragment, type ReactNode } from 'react';
import type { Finding } from '../../check/index.ts';
import { isolate, isolateName } from '../words/index.ts';
import { fontFamily } from '../print/fonts.ts';
import { Defer, Sources, deferHeight, sourcesHeight } from './caution-list.tsx';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { Formula } from './formula.tsx';
import { Languages } from './languages.tsx';
import { itemAndSize } from './names.ts';
import { packPages } from './pack.ts';
import { latinLines, lineScale, textLines } from './setting.ts';
import { lineHeight, sheets, textSize } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { Said, inEach, inSeveral, marked, saidHeight, languagesOf, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Columns of the findings, mm: a finding's name with its source, figure, and limit; the verdict has the rest. On a narrow page the source stands under the row. */
export const findingColumns = { wide: [86, 28, 27], narrow: [46, 27, 27] } as const;
/** White at the end of each column but the last, over the table and in a row, mm. */
const columnEnd = 3;
export const findingsPad = 4;
const rowPad = 2.5;
export const findingsHead = 8;
/** What a fact is about, the white beside it, and under all facts of a language, mm. */
export const factNameWidth = { wide: 42, narrow: 34 } as const;
export const factGap = 4;
export const factsPad = 5;
/** Size of a source, pt. */
const sourceSize = 10;

/** Which print this is, who read the words, and the checks with the sources of their limits. Without words the cover tells all of it that can be told. */
export function colophon(input: BookletInput): readonly ReactNode[] {
  if (input.edition === 'pictures') return [];
  const room = pageRoom(input) - findingsPad - headHeight(input) - 2;
  return packPages(entriesOf(input), room, room - headingHeight(input, 'colophon')).map((page, index) => (
    <div className="colophon main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="colophon" />}
      {page.map((entry) => ('facts' in entry ? <Facts key={entry.facts.words.lang} input={entry.facts} page={input} /> : null))}
      {page.some((entry) => 'defer' in entry) && <Defer input={input} />}
      {page.some((entry) => 'sources' in entry) && <Sources input={input} />}
      <Findings input={input} findings={page.flatMap((entry) => ('finding' in entry ? entry.finding : []))} />
    </div>
  ));
}

/** What stands in the colophon, in order: the facts once in each language, the caution on local codes, what the letters behind sources say, the findings. */
type Entry = { readonly height: number } & ({ readonly facts: BookletInput } | { readonly defer: true } | { readonly sources: true } | { readonly finding: Finding });

function entriesOf(input: BookletInput): readonly Entry[] {
  return [
    ...inEach(input).map((each) => ({ facts: each, height: factsHeight(each) })),
    { defer: true, height: deferHeight(input) + lineHeight },
    { sources: true, height: sourcesHeight(input) + lineHeight },
    ...input.report.findings.map((finding) => ({ finding, height: rowHeight(input, finding) })),
  ];
}

/** What the colophon says, by its key. */
function factsOf(input: BookletInput): readonly (readonly [string, string])[] {
  const { words, model, revision, contentMark, replaces = null, languages } = input;
  return [
    ['item', itemAndSize(input)],
    ['kit', words.t(`items.kits.${model.kit.name}`)],
    ['revision', isolate(words.number(revision))],
    ['mark', isolate(contentMark)],
    ...(replaces === null ? [] : [['replaces', isolate(replaces)] as const]),
    ['languages', (languages ?? [words.about.name]).join(' · ')],
    ['words', wordsFrom(input)],
    ['font', words.t('booklet.colophon.font-says', { font: words.list(families(input).map(isolate)), licence: isolate('SIL Open Font License 1.1') })],
  ];
}

/** The typefaces of the booklet's languages: figures are in the first. */
function families(input: BookletInput): readonly string[] {
  return [...new Set(['Noto Sans', ...languagesOf(input).map(({ lang }) => fontFamily(lang))])];
}

/** Height of one language's facts with the white under them, mm. */
function factsHeight(input: BookletInput): number {
  return factsPad + factsOf(input).reduce((sum, [name, text]) => sum + factHeight(input, name, text), 0);
}

function factHeight({ words, paper }: BookletInput, name: string, text: string): number {
  const { main, narrow } = sheets[paper];
  const nameWidth = narrow ? factNameWidth.narrow : factNameWidth.wide;
  const lines = Math.max(textLines(words, text, main - nameWidth - factGap, { size: textSize }), textLines(words, words.t(`booklet.colophon.${name}`), nameWidth, { size: textSize }));
  return lines * lineHeight * lineScale(words);
}

/** What the colophon says in one of the languages of a page. */
function Facts({ input, page }: { readonly input: BookletInput; readonly page: BookletInput }): ReactNode {
  const { words } = input;
  return (
    <dl {...(inSeveral(page) ? marked(input, page) : {})}>
      {factsOf(input).map(([name, text]) => (
        <div key={name}>
          <dt>{words.t(`booklet.colophon.${name}`)}</dt>
          <dd>{name === 'languages' ? <Languages input={page} /> : <Spoken text={text} />}</dd>
        </div>
      ))}
    </dl>
  );
}

function wordsFrom({ words }: BookletInput): string {
  const { about: { source }, review } = words;
  if (source) return words.t('booklet.colophon.source-text');
  return review === null ? words.t('booklet.colophon.draft') : words.t('booklet.colophon.reviewed', { reviewer: `${isolateName(review.by)} (${isolate(review.on)})` });
}

const findingName = ({ name }: Finding): Say => ({ words }) => words.t(`findings.${name}`);
const verdict = ({ verdict: name }: Finding): Say => ({ words }) => words.t(`booklet.colophon.verdicts.${name}`);
const column = (name: string): Say => ({ words }) => words.t(`booklet.colophon.${name}`);
const columnNames = ['check', 'figure', 'limit', 'verdict'] as const;

/** Widths of the columns' texts, mm. */
function columnWidths({ paper }: BookletInput): readonly [number, number, number, number] {
  const { main, narrow } = sheets[paper];
  const [check, shown, limit] = narrow ? findingColumns.narrow : findingColumns.wide;
  return [check - columnEnd, shown - columnEnd, limit - columnEnd, main - check - shown - limit];
}

function rowHeight(input: BookletInput, finding: Finding): number {
  const { narrow, main } = sheets[input.paper];
  const [width, , , verdictWidth] = columnWidths(input);
  const source = latinLines(finding.source, narrow ? main : width, sourceSize) * lineHeight;
  const named = saidHeight(input, findingName(finding), width, { size: textSize });
  const judged = saidHeight(input, verdict(finding), verdictWidth, { size: textSize });
  return (narrow ? Math.max(named, judged) + source : Math.max(named + source, judged)) + rowPad;
}

/** Height of the table's head, mm. */
function headHeight(input: BookletInput): number {
  const widths = columnWidths(input);
  return Math.max(findingsHead, 2.5 + Math.max(...columnNames.map((name, index) => saidHeight(input, column(name), widths[index] ?? 0, { size: textSize, bold: true }))));
}

function Findings({ input, findings }: { readonly input: BookletInput; readonly findings: readonly Finding[] }): ReactNode {
  const { narrow } = sheets[input.paper];
  if (findings.length === 0) return null;
  return (
    <table className="findings">
      <thead>
        <tr>
          {columnNames.map((name) => <th scope="col" key={name}><Said input={input} say={column(name)} /></th>)}
        </tr>
      </thead>
      <tbody>
        {findings.map((finding) => (
          <Fragment key={`${finding.name} ${finding.figure}`}>
            <tr>
              <th scope="row">
                <Said input={input} say={findingName(finding)} />
                {!narrow && <Source finding={finding} />}
              </th>
              <td><Spoken text={figure(input, finding.figure, finding.unit)} /></td>
              <td><Spoken text={figure(input, finding.limit, finding.unit)} /></td>
              <td><Said input={input} say={verdict(finding)} /></td>
            </tr>
            {narrow && <tr className="below"><td colSpan={4}><Source finding={finding} /></td></tr>}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}

function Source({ finding }: { readonly finding: Finding }): ReactNode {
  return <span className="source" lang="en" dir="ltr"><Formula text={finding.source} /></span>;
}

/** A finding's figure or limit: three digits that count; angles in degrees. */
export function figure({ words }: Pick<BookletInput, 'words'>, value: number, unit: string): string {
  const [shown, shownUnit] = unit === 'rad' ? [(value * 180) / Math.PI, '°'] : [value, unit];
  const whole = shown === 0 ? 1 : Math.floor(Math.log10(Math.abs(shown))) + 1;
  return words.measure(shown, shownUnit, Math.min(6, Math.max(0, 3 - whole)));
}
