import { useCallback, useEffect, useMemo, useState, type ReactNode } from 'react';
import type { Item } from '../../../read/index.ts';
import type { ProjectTexts } from '../../types.ts';
import { ModelView } from '../stage/model-view.tsx';
import { itemName, sizeName, useWords } from '../words.tsx';
import type { Subject } from '../workers/messages.ts';
import { Checks } from './checks.tsx';
import { findingLabels, findingTints, numbered } from './findings.ts';
import { CutLengths, FinishedSizes, FlatPattern, Paper } from './lengths.tsx';
import { Measures } from './measures.tsx';
import { Printed } from './printed.tsx';
import { useBefore } from './use-before.ts';
import { usePlanner } from './use-planner.ts';
import { useShaper } from './use-shaper.ts';
import { savedValue, valueOf, type Draft } from './values.ts';
import { Walk, type Place } from './walk.tsx';
import { bookletLanguages } from './booklet-languages.ts';

interface BenchProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  readonly subject: Subject;
  readonly texts: ProjectTexts;
  readonly returns: number;
  readonly pickers: ReactNode;
  readonly saving: (isFaulty: boolean) => ReactNode;
  readonly onPut: (values: Draft, stroke: number) => void;
}

/** One size on the bench: its measures and what follows from them on one side, the model and the walk through the work on the other. */
export function Bench({ item, size, draft, subject, texts, returns, pickers, saving, onPut }: BenchProps): ReactNode {
  const words = useWords();
  const { shaped, checked, drivers, told, store } = useShaper(subject);
  const planner = usePlanner(subject, words.lang, texts.locales, returns);
  const planned = useMemo(() => (planner.isBusy ? null : { run: planner.run, steps: planner.steps.length }), [planner.isBusy, planner.run, planner.steps]);
  const values = JSON.stringify(item.parameters.map(({ name }) => valueOf(item, size, draft, name).value));
  const { before, compareFromHere } = useBefore(`${item.name} ${size}`, values, { shaped, checked, planned, run: subject.run });
  const [refused, setRefused] = useState<ReadonlySet<string>>(new Set());
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
  const refuse = useCallback((field: string, isRefused: boolean): void => {
    setRefused((all) => (all.has(field) === isRefused ? all : new Set(isRefused ? [...all, field] : [...all].filter((each) => each !== field))));
  }, []);
  const put = (name: string, value: number, stroke: number): void => { onPut({ [name]: { value, dimension: savedValue(item, size, name).dimension } }, stroke); };
  const finished = useMemo(() => drivers.flatMap((driver) => {
    const length = shaped?.dimensions.find(({ letter }) => letter === driver.letter);
    return length === undefined ? [] : [{ driver, length }];
  }), [drivers, shaped]);
  const stepPacket = moment?.number === number ? moment.packet : null;
  const labels = useMemo(() => (isFinished && shaped !== null ? findingLabels(findings, shaped.packet) : []), [isFinished, shaped, findings]);
  const tints = useMemo(() => findingTints(findings, pointed), [findings, pointed]);
  const figures = useMemo(() => new Map(shaped?.dimensions.map(({ letter, value }) => [letter, words.number(value, 1)])), [shaped, words]);
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
              marks={isFinished ? shaped?.marks ?? NO_MARKS : moment?.marks ?? NO_MARKS} figures={figures} labels={labels} tints={tints}
              subject={isFinished ? `${item.name} ${size}` : `${item.name} ${size} ${place?.number ?? ''} ${stepPacket === null ? '' : 'here'}`} />
          )}
        <Walk steps={planner.steps} before={before.steps} place={place} isBusy={planner.isBusy} told={told === null ? planner.told : null} isPlaying={isPlaying} onPlace={setPlace} onPlay={setPlaying} />
      </div>
      <div className="bands">
        <Band name={words.t('page.measures.name')}>
          <Measures item={item} size={size} draft={draft} finished={finished} onChange={put} onRefused={refuse} />
        </Band>
        <div className="save-bar">{saving(told !== null || refused.size > 0)}</div>
        <Band name={words.t('page.checks.name')}>
          <Checks item={item.name} subject={subject} findings={findings} before={before.checked} advice={checked?.advice ?? null} isStale={isStale && told === null} told={told} pointed={pointed} onPoint={point} onPut={onPut} />
          <p className="buttons"><button type="button" className="compare" disabled={isStale || told !== null || planner.isBusy} onClick={compareFromHere}>{words.t('page.save.compare')}</button></p>
        </Band>
        {shaped !== null && (
          <>
            <Band name={words.t('booklet.chapters.dimensions')}><FinishedSizes shaped={shaped} saved={before.shaped} /></Band>
            <Band name={words.t('booklet.chapters.lengths')}><CutLengths shaped={shaped} saved={before.shaped} /></Band>
            <Band name={words.t('booklet.chapters.pattern')}><FlatPattern shaped={shaped} saved={before.shaped} /></Band>
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
