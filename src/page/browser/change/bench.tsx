import { useCallback, useEffect, useMemo, useState, type ReactNode } from 'react';
import type { Item } from '../../../read/index.ts';
import type { ProjectTexts } from '../../types.ts';
import { ModelView } from '../stage/model-view.tsx';
import { itemName, sizeName, useWords } from '../words.tsx';
import type { Shaped, Subject } from '../workers/messages.ts';
import { Checks } from './checks.tsx';
import { findingLabels, findingTints, numbered } from './findings.ts';
import { CutLengths, FinishedSizes, FlatPattern, Paper } from './lengths.tsx';
import { Measures } from './measures.tsx';
import { Printed } from './printed.tsx';
import { usePlanner } from './use-planner.ts';
import { useShaper } from './use-shaper.ts';
import type { Draft } from './values.ts';
import { Walk, type Place } from './walk.tsx';
import { bookletLanguages } from './booklet-languages.ts';

interface BenchProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  readonly subject: Subject;
  readonly texts: ProjectTexts;
  readonly pickers: ReactNode;
  readonly saving: (isFaulty: boolean) => ReactNode;
  readonly onChange: (name: string, value: number) => void;
}

/** One size on the bench: its measures and what follows from them on one side, the model and the walk through the work on the other. */
export function Bench({ item, size, draft, subject, texts, pickers, saving, onChange }: BenchProps): ReactNode {
  const words = useWords();
  const { shaped, checked, told, store } = useShaper(subject);
  const planner = usePlanner(subject, words.lang, texts.locales);
  const saved = useSaved(shaped, subject, Object.keys(draft).length === 0, `${item.name} ${size}`);
  const [pointed, setPointed] = useState<string | null>(null);
  const [place, setPlace] = useState<Place>(null);
  const [isPlaying, setPlaying] = useState(false);
  const findings = useMemo(() => numbered(checked?.findings ?? []), [checked]);
  const now = planner.steps.find(({ step }) => step.number === place?.number);
  const isFlat = now?.step.standing.name === 'bench';
  // While the order is worked out anew the finished item stands in: it follows the values at once.
  const isFinished = now === undefined || planner.isBusy;
  const { askMoment, askPicture, moment, picture } = planner;
  const number = now?.step.number ?? null;
  const done = place?.done ?? 1;

  useEffect(() => {
    if (number !== null && !isFlat) askMoment(number, Math.round(done * 64) / 64);
  }, [number, isFlat, done, askMoment, planner.run]);
  useEffect(() => {
    if (number !== null) askPicture(number);
  }, [number, askPicture, planner.run]);
  useEffect(() => {
    setPlace(null);
    setPlaying(false);
    setPointed(null);
  }, [item.name, size]);

  const languages = useMemo(() => bookletLanguages(texts.locales), [texts]);
  // A finding is looked at on the finished item.
  const point = useCallback((key: string | null): void => {
    setPointed(key);
    setPlaying(false);
    if (key !== null) setPlace(null);
  }, []);
  const stepPacket = moment?.number === number ? moment.packet : null;
  const labels = useMemo(() => (isFinished && shaped !== null ? findingLabels(findings, shaped.packet) : []), [isFinished, shaped, findings]);
  const tints = useMemo(() => findingTints(findings, pointed), [findings, pointed]);
  const name = `${itemName(words, item.name)}, ${sizeName(words, item.name, size)}`;
  const isStale = checked === null || checked.run !== subject.run;
  const flat = isFlat && !isFinished && picture?.number === number ? picture.drawings[0] : undefined;

  return (
    <div className="bench">
      <div className="head">
        {pickers}
      </div>
      <div className="stand">
        {flat !== undefined
          ? <div className="view flat-view"><Paper drawing={flat} name={now?.alt ?? name} /></div>
          : (
            <ModelView packet={isFinished ? shaped?.packet ?? null : stepPacket} store={isFinished ? store : planner.store} name={now?.alt ?? name}
              marks={isFinished ? shaped?.marks ?? NO_MARKS : moment?.marks ?? NO_MARKS} labels={labels} tints={tints}
              subject={isFinished ? `${item.name} ${size}` : `${item.name} ${size} ${place?.number ?? ''} ${stepPacket === null ? '' : 'here'}`} />
          )}
        <Walk steps={planner.steps} place={place} isBusy={planner.isBusy} told={told === null ? planner.told : null} isPlaying={isPlaying} onPlace={setPlace} onPlay={setPlaying} />
      </div>
      <div className="bands">
        <Band name={words.t('page.measures.name')}>
          <Measures item={item} size={size} draft={draft} onChange={onChange} />
          {saving(told !== null)}
        </Band>
        <Band name={words.t('page.checks.name')}>
          <Checks findings={findings} advice={checked?.advice ?? null} isStale={isStale && told === null} told={told} pointed={pointed} onPoint={point} />
        </Band>
        {shaped !== null && (
          <>
            <Band name={words.t('booklet.chapters.dimensions')}><FinishedSizes shaped={shaped} saved={saved} /></Band>
            <Band name={words.t('booklet.chapters.lengths')}><CutLengths shaped={shaped} saved={saved} /></Band>
            <Band name={words.t('booklet.chapters.pattern')}><FlatPattern shaped={shaped} saved={saved} /></Band>
          </>
        )}
        <Band name={words.t('page.printed.name')}>
          <Printed subject={subject} locales={texts.locales} languages={languages} planner={planner} now={now} />
        </Band>
      </div>
    </div>
  );
}

const NO_MARKS = [] as const;

function Band({ name, children }: { readonly name: string; readonly children: ReactNode }): ReactNode {
  return (
    <section className="part" aria-label={name}>
      <h2>{name}</h2>
      <div className="part-body">{children}</div>
    </section>
  );
}

/** The shapes as they were before anything was changed. */
function useSaved(shaped: Shaped | null, { run }: Subject, isUnchanged: boolean, name: string): Shaped | null {
  const [saved, setSaved] = useState<{ readonly name: string; readonly shaped: Shaped } | null>(null);
  useEffect(() => {
    if (shaped !== null && shaped.run === run && isUnchanged) setSaved({ name, shaped });
  }, [shaped, run, isUnchanged, name]);
  return saved?.name === name ? saved.shaped : null;
}
