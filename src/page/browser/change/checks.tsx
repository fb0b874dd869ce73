import { memo, type ReactNode } from 'react';
import { figure, isolate, Spoken, type Words } from '../../../booklet/index.ts';
import type { Advice, Finding } from '../../../check/index.ts';
import { nameOr, useWords } from '../words.tsx';
import type { NumberedFinding } from './findings.ts';

interface ChecksProps {
  readonly findings: readonly NumberedFinding[];
  readonly advice: Advice | null;
  /** Values are being worked out, or give no item. */
  readonly isStale: boolean;
  readonly told: string | null;
  readonly pointed: string | null;
  readonly onPoint: (key: string | null) => void;
}

/** What the checks found: first what fails and what to mind, by number as on the model; what holds is folded away. */
export const Checks = memo(function Checks({ findings, advice, isStale, told, pointed, onPoint }: ChecksProps): ReactNode {
  const words = useWords();
  const open = findings.filter(({ number }) => number !== null);
  const holding = findings.filter(({ number }) => number === null);
  const list = (those: readonly NumberedFinding[]): ReactNode =>
    <ul className="findings">{those.map((each) => <FindingRow key={each.key} each={each} isPointed={each.key === pointed} onPoint={onPoint} />)}</ul>;
  return (
    <>
      {told !== null && (
        <div className="told" role="alert">
          <p>{words.t('page.checks.no-item')}</p>
          <pre lang="en" dir="ltr">{told}</pre>
        </div>
      )}
      <p className="sum" role="status" aria-busy={isStale}>
        {words.t('page.checks.sum', { fail: countOf(findings, 'fail'), caution: countOf(findings, 'caution'), pass: holding.length })}
        {isStale && <> · {words.t('page.busy')}</>}
      </p>
      {advice !== null && <p><Spoken text={loadText(words, advice)} /></p>}
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

const countOf = (findings: readonly NumberedFinding[], verdict: string): number => findings.filter(({ finding }) => finding.verdict === verdict).length;

function loadText(words: ReturnType<typeof useWords>, { safeLoadPerDeck, fixToWall }: Advice): string {
  const load = safeLoadPerDeck === null ? words.t('booklet.no-safe-load') : words.t('page.checks.load', { load: words.measure(safeLoadPerDeck, 'N') });
  return fixToWall ? `${load} ${words.t('booklet.fix-to-wall')}` : load;
}

/** A finding's figure beside its limit; approvals are counted. */
function figuresText(words: Words, { name, figure: found, limit, unit, bound }: Finding): string {
  const values = { figure: figure({ words }, found, unit), limit: figure({ words }, limit, unit) };
  return words.t(`page.checks.${name === 'local-codes' ? 'approvals' : bound}`, values);
}

interface FindingRowProps {
  readonly each: NumberedFinding;
  readonly isPointed: boolean;
  readonly onPoint: (key: string | null) => void;
}

/** One finding; pressed, it points at its parts on the model. */
function FindingRow({ each: { key, finding, number }, isPointed, onPoint }: FindingRowProps): ReactNode {
  const words = useWords();
  return (
    <li>
      <button type="button" className={`finding ${finding.verdict}`} aria-pressed={isPointed} disabled={finding.parts.length === 0} onClick={() => { onPoint(isPointed ? null : key); }}>
        {number !== null && <span className={`label ${finding.verdict}`} dir="ltr">{number}</span>}
        <span className="finding-name">{nameOr(words, `findings.${finding.name}`, finding.name)}</span>
        <span className="verdict">{words.t(`booklet.colophon.verdicts.${finding.verdict}`)}</span>
        <span className="finding-figures"><Spoken text={figuresText(words, finding)} /></span>
      </button>
      <p className="source" lang="en" dir="ltr"><Spoken text={isolate(finding.source)} /></p>
    </li>
  );
}
