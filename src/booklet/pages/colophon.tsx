import type { ReactNode } from 'react';
import type { Finding } from '../../check/index.ts';
import { isolate, isolateName } from '../words/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { Formula } from './formula.tsx';
import { Languages } from './languages.tsx';
import { itemAndSize } from './names.ts';
import { packPages } from './pack.ts';
import { bandRoom, headingHeight, lineHeight, linesOf, sheets, textSize } from './sheet.ts';
import { SizeMark } from './size-mark.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';
import { wrappedLines } from './wrapped-lines.ts';

/** Width of the column with a finding's name and source, with the white at its end, and of a fact, mm. */
export const sourceWidth = 90;
const sourceGap = 3;
const factWidth = sheets.a4.main - 46;
/** Size of a source and of the caution on local codes, pt, and the caution's lines, mm. */
const sourceSize = 10;
const deferSize = 12;
const deferLine = 6;

/** Which print this is, who read the words, and the checks with the sources of their limits. */
export function colophon(input: BookletInput): readonly ReactNode[] {
  if (input.edition === 'pictures') return [<WordlessColophon key="colophon" input={input} />];
  const room = bandRoom(sheets[input.paper]) - 14;
  const rows = input.report.findings.map((finding) => ({ finding, height: rowHeight(input, finding) }));
  const pages = packPages(rows, room, room - headingHeight - factsHeight(input));
  return (pages.length === 0 ? [[]] : pages).map((page, index) => (
    <div className="colophon main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="colophon" />}
      {index === 0 && <Facts input={input} />}
      <Findings input={input} findings={page.map((row) => row.finding)} />
    </div>
  ));
}

function WordlessColophon({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, revision, contentMark } = input;
  return (
    <div className="colophon main">
      <ChapterHeading input={input} name="colophon" />
      <p><SizeMark input={input} height={10} /></p>
      <p><Languages input={input} /></p>
      <p><Spoken text={isolate(`${words.number(revision)} · ${contentMark}`)} /></p>
    </div>
  );
}

/** What the colophon says, by its key. */
function factsOf(input: BookletInput): readonly (readonly [string, string])[] {
  const { words, model, revision, contentMark, languages } = input;
  return [
    ['item', itemAndSize(input)],
    ['kit', words.t(`items.kits.${model.kit.name}`)],
    ['revision', isolate(words.number(revision))],
    ['mark', isolate(contentMark)],
    ['languages', words.list((languages ?? [words.about.name]).map(isolateName))],
    ['words', wordsFrom(input)],
    ['font', words.t('booklet.colophon.font-says', { font: isolate('Noto Sans'), licence: isolate('SIL Open Font License 1.1') })],
  ];
}

/** The lines above the findings with the white between them, mm. */
function factsHeight(input: BookletInput): number {
  const facts = factsOf(input).reduce((lines, [, text]) => lines + linesIn(input, text, factWidth, textSize), 0);
  const defer = linesIn(input, input.words.t('booklet.defer'), sheets[input.paper].main, deferSize);
  return facts * lineHeight + 5 + 3.5 + defer * deferLine + lineHeight;
}

function Facts({ input }: { readonly input: BookletInput }): ReactNode {
  const { words } = input;
  return (
    <>
      <dl>
        {factsOf(input).map(([name, text]) => (
          <div key={name}>
            <dt>{words.t(`booklet.colophon.${name}`)}</dt>
            <dd><Spoken text={text} /></dd>
          </div>
        ))}
      </dl>
      <p className="defer">{words.t('booklet.defer')}</p>
    </>
  );
}

function wordsFrom({ words }: BookletInput): string {
  const { source, reviewer } = words.about;
  if (source) return words.t('booklet.colophon.source-text');
  return reviewer === null ? words.t('booklet.colophon.draft') : words.t('booklet.colophon.reviewed', { reviewer: isolateName(reviewer) });
}

function rowHeight(input: BookletInput, finding: Finding): number {
  const width = sourceWidth - sourceGap;
  const lines = linesIn(input, input.words.t(`findings.${finding.name}`), width, textSize) + wrappedLines(finding.source, width, sourceSize);
  return lines * lineHeight + 2.5;
}

/** Letters' widths are known for Latin; other scripts are reckoned on the safe side. */
function linesIn({ words: { lang, about } }: BookletInput, text: string, width: number, size: number): number {
  return new Intl.Locale(lang).maximize().script === 'Latn' ? wrappedLines(text, width, size) : linesOf(text, width, size * about.textScale);
}

function Findings({ input, findings }: { readonly input: BookletInput; readonly findings: readonly Finding[] }): ReactNode {
  const { words } = input;
  return (
    <table className="findings">
      <thead>
        <tr>
          <th scope="col">{words.t('booklet.colophon.check')}</th>
          <th scope="col">{words.t('booklet.colophon.figure')}</th>
          <th scope="col">{words.t('booklet.colophon.limit')}</th>
          <th scope="col">{words.t('booklet.colophon.verdict')}</th>
        </tr>
      </thead>
      <tbody>
        {findings.map((finding) => (
          <tr key={`${finding.name} ${finding.figure}`}>
            <th scope="row">
              {words.t(`findings.${finding.name}`)}
              <span className="source" lang="en" dir="ltr"><Formula text={finding.source} /></span>
            </th>
            <td><Spoken text={figure(input, finding.figure, finding.unit)} /></td>
            <td><Spoken text={figure(input, finding.limit, finding.unit)} /></td>
            <td>{words.t(`booklet.colophon.verdicts.${finding.verdict}`)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A finding's figure or limit: three digits that count; angles in degrees. */
export function figure({ words }: Pick<BookletInput, 'words'>, value: number, unit: string): string {
  const [shown, shownUnit] = unit === 'rad' ? [(value * 180) / Math.PI, '°'] : [value, unit];
  const whole = shown === 0 ? 1 : Math.floor(Math.log10(Math.abs(shown))) + 1;
  return words.measure(shown, shownUnit, Math.min(6, Math.max(0, 3 - whole)));
}
