import { memo, useEffect, useRef, type ReactNode } from 'react';
import { isolate, Spoken } from '../../../booklet/index.ts';
import { useWords } from '../words.tsx';
import type { PlannedStep } from '../workers/messages.ts';
import { WhyHere } from './why-here.tsx';

/** Where the walk through the work stands: at a step, so far through its motion (0 to 1), or at the finished item. */
export type Place = { readonly number: number; readonly done: number } | null;

interface WalkProps {
  readonly steps: readonly PlannedStep[];
  /** How many steps it took before. */
  readonly before: number | null;
  readonly place: Place;
  readonly isBusy: boolean;
  readonly told: string | null;
  readonly isPlaying: boolean;
  readonly onPlace: (place: Place) => void;
  readonly onPlay: (isPlaying: boolean) => void;
}

/** Walks through the order of work: which step, and how far its motion has gone. */
export const Walk = memo(function Walk({ steps, before, place, isBusy, told, isPlaying, onPlace, onPlay }: WalkProps): ReactNode {
  const words = useWords();
  usePlaying(isPlaying, place, onPlace, onPlay);
  const last = steps.length + 1;
  const at = place?.number ?? last;
  const now = steps.find(({ step }) => step.number === place?.number);
  const moves = now !== undefined && (now.step.motions.length > 0 || now.step.drillsFor.length > 0);
  const go = (number: number): void => {
    onPlay(false);
    onPlace(number >= last ? null : { number: Math.max(1, number), done: 0 });
  };
  const said = now === undefined ? words.t('page.walk.finished') : `${words.number(at)}. ${now.caption}`;
  return (
    <section className="walk" aria-label={words.t('page.walk.name')} aria-busy={isBusy}>
      <p className="said" role="status">
        {now !== undefined && <span className="at"><Spoken text={words.t('page.walk.place', { number: words.number(at), all: words.number(steps.length) })} /></span>}
        <span><Spoken text={now === undefined ? said : now.caption} />{isBusy && <> · {words.t('page.walk.busy')}</>}</span>
      </p>
      {before !== null && !isBusy && before !== steps.length && <p className="was">{words.t('page.walk.steps', { number: words.number(steps.length) })} ({words.t('page.lengths.before', { was: words.number(before) })})</p>}
      {told !== null && <pre className="told" role="alert" lang="en" dir="ltr">{told}</pre>}
      <div className="walk-row">
        <button type="button" aria-label={words.t('page.walk.before')} disabled={steps.length === 0 || at <= 1} onClick={() => { go(at - 1); }}>−</button>
        <label className="walk-slide">
          <span>{words.t('page.walk.step')}</span>
          <input type="range" min={1} max={last} step={1} value={at} disabled={steps.length === 0} aria-valuetext={said} onChange={(event) => { go(Number(event.target.value)); }} />
          <span className="count"><Spoken text={isolate(`${words.number(Math.min(at, steps.length))}/${words.number(steps.length)}`)} /></span>
        </label>
        <button type="button" aria-label={words.t('page.walk.after')} disabled={steps.length === 0 || at >= last} onClick={() => { go(at + 1); }}>+</button>
      </div>
      <div className="walk-row">
        <button type="button" className="play" disabled={!moves} aria-pressed={isPlaying} onClick={() => { onPlay(!isPlaying); }}>{words.t(isPlaying ? 'page.walk.hold' : 'page.walk.move')}</button>
        <label className="walk-slide">
          <span>{words.t('page.walk.far')}</span>
          <input type="range" min={0} max={100} step={1} value={Math.round((place?.done ?? 1) * 100)} disabled={!moves}
            onChange={(event) => {
              onPlay(false);
              if (place !== null) onPlace({ number: place.number, done: Number(event.target.value) / 100 });
            }} />
          <span className="count"><Spoken text={isolate(`${words.number(Math.round((place?.done ?? 1) * 100))} %`)} /></span>
        </label>
      </div>
      {now !== undefined && <WhyHere why={now.why} />}
    </section>
  );
});

/** ms that a motion takes on the screen. */
const MOTION = 2600;

/** Most of a motion that passes between two frames: a slow machine plays it slower, and leaves nothing out. */
const LEAP = 0.05;

/** Moves the place on with the clock until the motion is done; one that is done begins anew. */
function usePlaying(isPlaying: boolean, place: Place, onPlace: WalkProps['onPlace'], onPlay: WalkProps['onPlay']): void {
  const latest = useRef({ place, onPlace, onPlay });
  useEffect(() => { latest.current = { place, onPlace, onPlay }; });
  useEffect(() => {
    if (!isPlaying) return undefined;
    let frame = 0;
    // What the page shows may lag behind the clock: how far the motion is, is known here.
    let played: { readonly done: number; readonly at: number } | null = null;
    const turn = (now: number): void => {
      const { place: at, onPlace: put, onPlay: play } = latest.current;
      if (at === null) return;
      const start = at.done >= 1 ? 0 : at.done;
      const done = played === null ? start : Math.min(1, played.done + Math.min(LEAP, (now - played.at) / MOTION));
      played = { done, at: now };
      put({ number: at.number, done });
      if (done >= 1) play(false);
      else frame = requestAnimationFrame(turn);
    };
    frame = requestAnimationFrame(turn);
    return () => { cancelAnimationFrame(frame); };
  }, [isPlaying]);
}
