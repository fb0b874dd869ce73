import { useState, type ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import { dimensionedText, type Item, type Quantity } from '../../../read/index.ts';
import type { SaveAnswer } from '../../types.ts';
import { itemName, parameterLabel, sizeName, useWords } from '../words.tsx';
import { Arrow } from './arrow.tsx';
import type { Change, ChangeOrder, Changes } from './use-changes.ts';
import { savedValue, type Draft } from './values.ts';

interface SavingProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  readonly changes: Changes;
  /** The values give no item, or a figure is not allowed: they cannot be saved. */
  readonly isFaulty: boolean;
  readonly mayChange: boolean;
  readonly onSave: () => Promise<SaveAnswer>;
  readonly onBack: () => void;
  /** Reads all files again; changed values stay. */
  readonly onRead: () => Promise<void>;
  /** Reads all files again; changed values are lost. */
  readonly onReadAnew: () => Promise<void>;
  readonly onOrder: (order: ChangeOrder) => void;
}

/** What is changed and not yet in the file, and what can be done with it; and all changes so far, to be undone also when they are saved. */
export function Saving({ item, size, draft, changes, isFaulty, mayChange, onSave, onBack, onRead, onReadAnew, onOrder }: SavingProps): ReactNode {
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
  const reading = (read: () => Promise<void>) => doing(async () => {
    await read();
    setAnswer(null);
  });
  return (
    <div className="saving">
      <p role="status">
        {changed.length > 0 && words.t('page.save.changed', { count: changed.length })}
        {changed.length === 0 && answer?.saved === true && words.t('page.save.saved', { file: item.source.file })}
        {changed.length === 0 && answer?.saved !== true && words.t('page.save.none', { file: item.source.file })}
      </p>
      {changed.length > 0 && (
        <ul className="changes">
          {changed.map(([name, quantity]) => <li key={name}>{parameterLabel(words, item.name, name)}: <FromTo from={savedValue(item, size, name)} to={quantity} /></li>)}
        </ul>
      )}
      {answer !== null && !answer.saved && (
        <div className="told" role="alert">
          <p>{words.t(`page.save.${answer.why}`)}</p>
          <pre lang="en" dir="ltr">{answer.told}</pre>
          {answer.why === 'moved' && (
            <p className="buttons">
              <button type="button" onClick={reading(onRead)}>{words.t('page.server.read-keep')}</button>
              <button type="button" onClick={reading(onReadAnew)}>{words.t('page.save.read')}</button>
            </p>
          )}
        </div>
      )}
      {trouble !== null && <pre className="told" role="alert" lang="en" dir="ltr">{trouble}</pre>}
      <p className="buttons">
        <button type="button" className="main-button" disabled={changed.length === 0 || isFaulty || isBusy || !mayChange} onClick={doing(async () => { setAnswer(await onSave()); })}><Spoken text={words.t('page.save.save')} /></button>
        <button type="button" disabled={changed.length === 0 || isBusy} onClick={() => { setAnswer(null); onBack(); }}>{words.t('page.save.back')}</button>
        <button type="button" className="undo" disabled={changes.past.length === 0 || isBusy} onClick={() => { onOrder({ order: 'undo' }); }}>{words.t('page.save.undo')}</button>
        <button type="button" className="redo" disabled={changes.undone.length === 0 || isBusy} onClick={() => { onOrder({ order: 'redo' }); }}>{words.t('page.save.redo')}</button>
      </p>
      {changes.past.length > 0 && (
        <details className="history">
          <summary>{words.t('page.save.history', { number: words.number(changes.past.length) })}</summary>
          <ol>{changes.past.map((change, index) => <li key={index}><Changed change={change} /></li>)}</ol>
        </details>
      )}
    </div>
  );
}

/** One change of the history: of which item and size, and each value as it was and as it is. */
function Changed({ change: { path, size, before, after } }: { readonly change: Change }): ReactNode {
  const words = useWords();
  const item = path.split('/').at(-2) ?? path;
  return (
    <>
      {itemName(words, item)}, {sizeName(words, item, size)}: {Object.entries(after).map(([name, quantity]) =>
        <span key={name}>{parameterLabel(words, item, name)} <FromTo from={before[name]} to={quantity} />. </span>)}
    </>
  );
}

/** Figures stand as in the file, from left to right in every language. */
function FromTo({ from, to }: { readonly from: Quantity | undefined; readonly to: Quantity }): ReactNode {
  return <bdi dir="ltr">{from === undefined ? '' : dimensionedText(from)} <Arrow /> {dimensionedText(to)}</bdi>;
}
