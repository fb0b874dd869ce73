import { useEffect, useRef, useState, type ReactNode } from 'react';
import { isolate, Spoken } from '../../../booklet/index.ts';
import type { Finding, Remedy } from '../../../check/index.ts';
import { dimensionedText } from '../../../read/index.ts';
import { parameterLabel, useWords } from '../words.tsx';
import type { MenderAnswer, MenderOrder, Subject } from '../workers/messages.ts';
import type { Draft } from './values.ts';

interface MendProps {
  readonly item: string;
  readonly subject: Subject;
  readonly finding: Finding['name'];
  readonly onPut: (values: Draft, stroke: number) => void;
}

/** Taking a remedy is a stroke of its own. */
const STROKE = -2;

/** Which single value would make a check pass: worked out when asked for, in a worker of its own that ends with the values. */
export function Mend({ item, subject, finding, onPut }: MendProps): ReactNode {
  const words = useWords();
  const [state, setState] = useState<{ readonly run: number; readonly remedies: readonly Remedy[]; readonly isTried: boolean } | null>(null);
  const worker = useRef<Worker | null>(null);
  const { run } = subject;
  useEffect(() => () => { worker.current?.terminate(); }, [run]);
  const ask = (): void => {
    worker.current?.terminate();
    const started = new Worker('/mender.js', { type: 'module' });
    worker.current = started;
    setState({ run, remedies: [], isTried: false });
    started.addEventListener('message', ({ data }: MessageEvent<MenderAnswer>) => {
      setState((before) => (before === null ? null : data.answer === 'remedy' ? { ...before, remedies: [...before.remedies, data.remedy] } : { ...before, isTried: true }));
      if (data.answer !== 'remedy') started.terminate();
    });
    const order: MenderOrder = { subject, finding };
    started.postMessage(order);
  };
  if (state === null || state.run !== run) return <button type="button" className="mend" onClick={ask}>{words.t('page.mend.ask')}</button>;
  return (
    <div className="mends" role="status" aria-busy={!state.isTried}>
      {state.remedies.map(({ parameter, value }) => (
        <p key={parameter}><Spoken text={`${parameterLabel(words, item, parameter)}: ${isolate(dimensionedText(value))}`} /> <button type="button" onClick={() => { onPut({ [parameter]: value }, STROKE); }}>{words.t('page.mend.take')}</button></p>
      ))}
      {!state.isTried && <p>{words.t('page.mend.trying')}</p>}
      {state.isTried && state.remedies.length === 0 && <p>{words.t('page.mend.none')}</p>}
    </div>
  );
}
