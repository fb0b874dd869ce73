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

/** Room for the lines above the findings, mm. */
const factsHeight = 88;
/** Width of the column with a finding's name and source, mm. */
const sourceWidth = 104;

/** Which print this is, who read the words, and the checks with the sources of their limits. */
export function colophon(input: BookletInput): readonly ReactNode[] {
  if (input.edition === 'pictures') return [<WordlessColophon key="colophon" input={input} />];
  const room = bandRoom(sheets[input.paper]) - 14;
  const rows = input.report.findings.map((finding) => ({ finding, height: rowHeight(input, finding) }));
  const pages = packPages(rows, room, room - headingHeight - factsHeight);
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

function Facts({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, model, revision, contentMark, languages } = input;
  const facts: readonly (readonly [string, string])[] = [
    ['item', itemAndSize(input)],
    ['kit', words.t(`items.kits.${model.kit.name}`)],
    ['revision', isolate(words.number(revision))],
    ['mark', isolate(contentMark)],
    ['languages', words.list((languages ?? [words.about.name]).map(isolateName))],
    ['words', wordsFrom(input)],
    ['font', words.t('booklet.colophon.font-says', { font: isolate('Noto Sans'), licence: isolate('SIL Open Font License 1.1') })],
  ];
  return (
    <>
      <dl>
        {facts.map(([name, text]) => (
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

function rowHeight({ words }: BookletInput, finding: Finding): number {
  const lines = linesOf(words.t(`findings.${finding.name}`), sourceWidth, textSize * words.about.textScale) + linesOf(finding.source, sourceWidth, 10);
  return lines * lineHeight + 3;
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
            <th scope="row" style={{ width: `${sourceWidth}mm` }}>
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

/** Three digits that count; angles in degrees. */
function figure({ words }: BookletInput, value: number, unit: string): string {
  const [shown, shownUnit] = unit === 'rad' ? [(value * 180) / Math.PI, '°'] : [value, unit];
  const whole = shown === 0 ? 1 : Math.floor(Math.log10(Math.abs(shown))) + 1;
  return words.measure(shown, shownUnit, Math.min(6, Math.max(0, 3 - whole)));
}
