import { useState, type ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import { dimensionedText, type Item } from '../../../read/index.ts';
import type { SaveAnswer } from '../../types.ts';
import { useWords } from '../words.tsx';
import { savedValue, type Draft } from './values.ts';

interface SavingProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  /** The values give no item: they cannot be saved. */
  readonly isFaulty: boolean;
  readonly onSave: () => Promise<SaveAnswer>;
  readonly onBack: () => void;
  /** Reads all files again; changed values are lost. */
  readonly onRead: () => Promise<void>;
}

/** What is changed and not yet in the file, and what can be done with it. */
export function Saving({ item, size, draft, isFaulty, onSave, onBack, onRead }: SavingProps): ReactNode {
  const words = useWords();
  const [answer, setAnswer] = useState<SaveAnswer | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const changed = Object.entries(draft);
  const doing = (work: () => Promise<void>) => (): void => {
    setBusy(true);
    setTrouble(null);
    void work().catch((error: unknown) => { setTrouble(error instanceof Error ? error.message : String(error)); }).finally(() => { setBusy(false); });
  };
  return (
    <div className="saving">
      <p role="status">
        {changed.length > 0 && words.t('page.save.changed', { count: changed.length })}
        {changed.length === 0 && answer?.saved === true && words.t('page.save.saved', { file: item.source.file })}
        {changed.length === 0 && answer?.saved !== true && words.t('page.save.none', { file: item.source.file })}
      </p>
      {changed.length > 0 && (
        <ul className="changes" dir="ltr" lang="en">
          {changed.map(([name, quantity]) => <li key={name}>{name}: {dimensionedText(savedValue(item, size, name))} → {dimensionedText(quantity)}</li>)}
        </ul>
      )}
      {answer !== null && !answer.saved && (
        <div className="told" role="alert">
          <p>{words.t(`page.save.${answer.why}`)}</p>
          <pre lang="en" dir="ltr">{answer.told}</pre>
          {answer.why === 'moved' && <button type="button" onClick={doing(async () => { await onRead(); setAnswer(null); })}>{words.t('page.save.read')}</button>}
        </div>
      )}
      {trouble !== null && <pre className="told" role="alert" lang="en" dir="ltr">{trouble}</pre>}
      <p className="buttons">
        <button type="button" className="main-button" disabled={changed.length === 0 || isFaulty || isBusy} onClick={doing(async () => { setAnswer(await onSave()); })}><Spoken text={words.t('page.save.save')} /></button>
        <button type="button" disabled={changed.length === 0 || isBusy} onClick={() => { setAnswer(null); onBack(); }}>{words.t('page.save.back')}</button>
      </p>
    </div>
  );
}
