import { useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { listItems, filesInMemory } from '../../../read/index.ts';
import type { ProjectTexts, SaveAnswer } from '../../types.ts';
import { itemName, sizeName, useWords } from '../words.tsx';
import type { Subject } from '../workers/messages.ts';
import { Bench } from './bench.tsx';
import { Grow } from './grow.tsx';
import { itemOrTold } from './item-or-told.ts';
import { Saving } from './saving.tsx';
import { draftOf, keyOf, type ChangeOrder, type Changes } from './use-changes.ts';
import type { SavingHook } from './use-saving.ts';
import { savedValue, textsOf, valueOf, type Draft } from './values.ts';

interface ChangingProps {
  readonly texts: ProjectTexts;
  readonly changes: Changes;
  readonly saving: SavingHook;
  /** How often the program has come back: what it broke off is begun anew. */
  readonly returns: number;
  readonly onOrder: (order: ChangeOrder) => void;
  readonly onRead: () => Promise<void>;
  /** Something was not answered. */
  readonly onTrouble: () => Promise<void>;
}

const KEPT_ITEM = 'foldwright.item';
/** Putting all back is a stroke of its own. */
const BACK_STROKE = -1;

/** Choose an item and a size, change its measures, see what comes of it, and save. */
export function Changing({ texts, changes, saving, returns, onOrder, onRead, onTrouble }: ChangingProps): ReactNode {
  const words = useWords();
  const paths = useMemo(() => listItems(filesInMemory(texts.files)), [texts]);
  const [path, setPath] = useState(() => paths.find((each) => each === localStorage.getItem(KEPT_ITEM)) ?? paths[0] ?? '');
  const [sizes, setSizes] = useState<Readonly<Record<string, string>>>({});
  const read = useMemo(() => itemOrTold(texts, path), [texts, path]);
  const item = typeof read === 'string' ? null : read;
  const wished = item?.sizes.find(({ name }) => name === sizes[path])?.name;
  const size = item === null ? '' : wished ?? item.sizes[1]?.name ?? item.sizes[0]?.name ?? '';
  const place = useMemo(() => ({ path, size }), [path, size]);
  const draft = useMemo(() => (item === null ? {} : draftOf(changes, item, place)), [changes, item, place]);
  const subject = useSubject(item === null ? null : texts, path, size, draft);
  useEffect(() => { localStorage.setItem(KEPT_ITEM, path); }, [path]);
  useLeaving(saving.unsaved.length > 0);
  useUndoKeys(onOrder);

  const save = async (): Promise<SaveAnswer> => {
    try {
      return await saving.save(place);
    } catch (error) {
      await onTrouble();
      throw error;
    }
  };
  const readAnew = async (): Promise<void> => {
    await onRead();
    onOrder({ order: 'forget' });
  };
  const choose = (next: string, nextSize?: string): void => {
    setPath(next);
    if (nextSize !== undefined) setSizes((before) => ({ ...before, [next]: nextSize }));
  };

  const pickers = (
    <div className="pickers">
      <label>{words.t('page.change.item')}
        <select value={path} onChange={(event) => { choose(event.target.value); }}>
          {paths.map((each) => <option key={each} value={each}>{itemName(words, folderOf(each))}</option>)}
        </select>
      </label>
      <label>{words.t('page.change.size')}
        <select value={size} disabled={item === null} onChange={(event) => { choose(path, event.target.value); }}>
          {item?.sizes.map((each) => <option key={each.name} value={each.name}>{sizeName(words, item.name, each.name)}</option>)}
        </select>
      </label>
      {item !== null && texts.mayChange && <Grow key={keyOf(place)} place={place} draft={draft} mark={texts.marks[path] ?? ''} onGrown={async (grown) => { await onRead(); choose(grown.path, grown.size); }} />}
    </div>
  );
  if (item === null || subject === null) {
    return <>{pickers}<div className="told" role="alert"><p>{words.t('page.change.unreadable')}</p><pre lang="en" dir="ltr">{typeof read === 'string' ? read : ''}</pre></div></>;
  }
  const put = (values: Draft, stroke: number): void => {
    const before = Object.fromEntries(Object.keys(values).map((name) => [name, valueOf(item, size, draft, name)]));
    onOrder({ order: 'change', change: { ...place, before, after: values, stroke } });
  };
  const putBack = (): void => { put(Object.fromEntries(Object.keys(draft).map((name) => [name, savedValue(item, size, name)])), BACK_STROKE); };
  return (
    <Bench item={item} size={size} draft={draft} subject={subject} texts={texts} returns={returns} pickers={pickers} onPut={put}
      saving={(isFaulty) => <Saving key={keyOf(place)} item={item} size={size} draft={draft} changes={changes} isFaulty={isFaulty} mayChange={texts.mayChange} onSave={save} onBack={putBack} onRead={onRead} onReadAnew={readAnew} onOrder={onOrder} />} />
  );
}

const folderOf = (path: string): string => path.split('/').at(-2) ?? path;

/** What the workers are to work on; its run counts up whenever it is another. */
function useSubject(texts: ProjectTexts | null, path: string, size: string, draft: Draft): Subject | null {
  const run = useRef(0);
  return useMemo(() => {
    run.current += 1;
    return texts === null ? null : { run: run.current, files: filesFor(texts, path), path, size, values: textsOf(draft) };
  }, [texts, path, size, draft]);
}

/** The item's own file and all kits. */
const filesFor = ({ files }: ProjectTexts, path: string): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(files).filter(([each]) => each === path || each.startsWith('steps/kits/')));

/** Asks before the page is left with values that are not saved. */
function useLeaving(isChanged: boolean): void {
  useEffect(() => {
    if (!isChanged) return undefined;
    const ask = (event: BeforeUnloadEvent): void => { event.preventDefault(); };
    addEventListener('beforeunload', ask);
    return () => { removeEventListener('beforeunload', ask); };
  }, [isChanged]);
}

/** Undo and redo by the usual keys, but in fields that have their own. */
function useUndoKeys(onOrder: (order: ChangeOrder) => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return;
      if (event.target instanceof HTMLInputElement && event.target.type !== 'range' && event.target.type !== 'checkbox') return;
      event.preventDefault();
      onOrder({ order: event.shiftKey ? 'redo' : 'undo' });
    };
    addEventListener('keydown', press);
    return () => { removeEventListener('keydown', press); };
  }, [onOrder]);
}
