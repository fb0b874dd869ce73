import { memo, type ReactNode } from 'react';
import { figure, isolate, loadInKilograms, Spoken, type Words } from '../../../booklet/index.ts';
import type { Advice, Finding } from '../../../check/index.ts';
import { nameOr, useWords } from '../words.tsx';
import type { Checked, Subject } from '../workers/messages.ts';
import { bySeverity, type NumberedFinding } from './findings.ts';
import { Mend } from './mend.tsx';
import type { Draft } from './values.ts';

interface ChecksProps {
  /** Its name in its file. */
  readonly item: string;
  readonly subject: Subject;
  readonly findings: readonly NumberedFinding[];
  /** What was found of the values before. */
  readonly before: Checked | null;
  readonly advice: Advice | null;
  /** Values are being worked out, or give no item. */
  readonly isStale: boolean;
  readonly told: string | null;
  readonly pointed: string | null;
  readonly onPoint: (key: string | null) => void;
  readonly onPut: (values: Draft, stroke: number) => void;
}

/** What the checks found: first what fails and what to mind, by number as on the model; what holds is folded away. */
export const Checks = memo(function Checks({ item, subject, findings, before, advice, isStale, told, pointed, onPoint, onPut }: ChecksProps): ReactNode {
  const words = useWords();
  const open = findings.filter(({ number }) => number !== null);
  const holding = findings.filter(({ number }) => number === null);
  const list = (those: readonly NumberedFinding[]): ReactNode =>
    <ul className="findings">{those.map((each) => <FindingRow key={each.key} each={each} was={before === null ? null : wasOf(before.findings, findings, each)} isPointed={each.key === pointed} onPoint={onPoint}
      mend={each.number === null || isStale ? null : <Mend item={item} subject={subject} finding={each.finding.name} onPut={onPut} />} />)}</ul>;
  return (
    <>
      {told !== null && (
        <div className="told" role="alert">
          <p>{words.t('page.checks.no-item')}</p>
          <pre lang="en" dir="ltr">{told}</pre>
        </div>
      )}
      <p className="sum" role="status" aria-busy={isStale}>
        {sumText(words, findings.map(({ finding }) => finding))}
        {before !== null && findings.length > 0 && sumText(words, before.findings) !== sumText(words, findings.map(({ finding }) => finding)) && <span className="was"> ({words.t('page.lengths.before', { was: sumText(words, before.findings) })})</span>}
        {isStale && <> · {words.t('page.busy')}</>}
      </p>
      {advice !== null && <p className="load"><Spoken text={loadText(words, advice)} />{before !== null && loadText(words, before.advice) !== loadText(words, advice) && <span className="was"> (<Spoken text={words.t('page.lengths.before', { was: loadText(words, before.advice) })} />)</span>}</p>}
      {list(open)}
      {holding.length > 0 && (
        <details>
          <summary>{words.t('page.checks.holding', { count: holding.length })}</summary>
          {list(holding)}
        </details>
      )}
      <p className="defer">{words.t('booklet.colophon.sources')}</p>
      <p className="defer">{words.t('page.checks.defer')}</p>
    </>
  );
});

const sumText = (words: ReturnType<typeof useWords>, findings: readonly Finding[]): string =>
  words.t('page.checks.sum', { fail: countOf(findings, 'fail'), caution: countOf(findings, 'caution'), pass: countOf(findings, 'pass') });

const countOf = (findings: readonly Finding[], verdict: Finding['verdict']): number => findings.filter((finding) => finding.verdict === verdict).length;

/** The same finding before: that of its name, and where several have it, the one in the same place among them. Undefined for one that was not there. */
function wasOf(before: readonly Finding[], now: readonly NumberedFinding[], { finding, key }: NumberedFinding): Finding | undefined {
  const place = now.filter((each) => each.finding.name === finding.name).findIndex((each) => each.key === key);
  return [...before].sort(bySeverity).filter(({ name }) => name === finding.name)[place];
}

/** As it is printed, in kg, and as it is reckoned, in N. */
const loadFigure = (words: Words, newtons: number): string => `${words.measure(loadInKilograms(newtons), 'kg')} (${words.measure(newtons, 'N')})`;

/** One figure where all places bear alike, else one for each from the highest down. */
function loadText(words: ReturnType<typeof useWords>, { safeLoadPerDeck, loads, wall }: Advice): string {
  const told = loads.every(({ load }) => load === safeLoadPerDeck) ? [safeLoadPerDeck ?? 0] : loads.map(({ load }) => load);
  const load = safeLoadPerDeck === null ? words.t('booklet.no-safe-load') : words.t('page.checks.load', { load: told.map((each) => loadFigure(words, each)).join(' / ') });
  return wall !== null ? `${load} ${words.t('booklet.fix-to-wall')}` : load;
}

/** A finding's figure beside its limit; approvals are counted. */
function figuresText(words: Words, { name, figure: found, limit, unit, bound }: Finding): string {
  const values = { figure: figure({ words }, found, unit), limit: figure({ words }, limit, unit) };
  return words.t(`page.checks.${name === 'local-codes' ? 'approvals' : bound}`, values);
}

interface FindingRowProps {
  readonly each: NumberedFinding;
  /** The same before; null while that is not known, undefined where there was none. */
  readonly was: Finding | null | undefined;
  readonly mend: ReactNode;
  readonly isPointed: boolean;
  readonly onPoint: (key: string | null) => void;
}

/** One finding; pressed, it points at its parts on the model. */
function FindingRow({ each: { key, finding, number }, was, mend, isPointed, onPoint }: FindingRowProps): ReactNode {
  const words = useWords();
  return (
    <li>
      <button type="button" className={`finding ${finding.verdict}`} aria-pressed={isPointed} disabled={finding.parts.length === 0} onClick={() => { onPoint(isPointed ? null : key); }}>
        {number !== null && <span className={`label ${finding.verdict}`} dir="ltr">{number}</span>}
        <span className="finding-name">{nameOr(words, `findings.${finding.name}`, finding.name)}</span>
        <span className="verdict">{words.t(`booklet.colophon.verdicts.${finding.verdict}`)}</span>
        <span className="finding-figures"><Spoken text={figuresText(words, finding)} />{was !== null && was !== undefined && differs(words, was, finding) && <span className="was"> (<Spoken text={words.t('page.lengths.before', { was: `${figure({ words }, was.figure, was.unit)}, ${words.t(`booklet.colophon.verdicts.${was.verdict}`)}` })} />)</span>}</span>
      </button>
      {mend}
      <p className="source" lang="en" dir="ltr"><Spoken text={isolate(finding.source)} /></p>
    </li>
  );
}

/** Whether a reader sees another figure or another verdict. */
const differs = (words: ReturnType<typeof useWords>, was: Finding, now: Finding): boolean =>
  was.verdict !== now.verdict || figure({ words }, was.figure, was.unit) !== figure({ words }, now.figure, now.unit);
