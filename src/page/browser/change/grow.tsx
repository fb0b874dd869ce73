import { useId, useState, type ReactNode } from 'react';
import type { GrowAnswer, GrowOrder } from '../../types.ts';
import { askGrow } from '../asking.ts';
import { useWords } from '../words.tsx';
import type { Place } from './use-changes.ts';
import { textsOf, type Draft } from './values.ts';

interface GrowProps {
  readonly place: Place;
  readonly draft: Draft;
  readonly mark: string;
  readonly onGrown: (grown: Place) => Promise<void>;
}

/** A new size, or a new item, from the one that is looked at, with its values as they are shown. */
export function Grow({ place, draft, mark, onGrown }: GrowProps): ReactNode {
  const words = useWords();
  const id = useId();
  const [what, setWhat] = useState<GrowOrder['what']>('size');
  const [name, setName] = useState('');
  const [title, setTitle] = useState('');
  const [told, setTold] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const grow = async (): Promise<void> => {
    setBusy(true);
    setTold(null);
    try {
      const answer: GrowAnswer = await askGrow({ what, ...place, name, title, values: textsOf(draft), mark });
      if (answer.saved) await onGrown(answer);
      else setTold(answer.told);
    } catch (error) {
      setTold(error instanceof Error ? error.message : String(error));
    }
    setBusy(false);
  };
  return (
    <details className="grow">
      <summary>{words.t('page.grow.name')}</summary>
      <form onSubmit={(event) => {
        event.preventDefault();
        void grow();
      }}>
        {(['size', 'item'] as const).map((each) => (
          <label className="tick" key={each}><input type="radio" name={`${id}-what`} value={each} checked={what === each} onChange={() => { setWhat(each); }} /> {words.t(`page.grow.${each}`)}</label>
        ))}
        <label className="field" htmlFor={`${id}-title`}>{words.t('page.grow.title')}</label>
        <input id={`${id}-title`} name="title" type="text" required maxLength={80} value={title} onChange={(event) => { setTitle(event.target.value); }} />
        <label className="field" htmlFor={`${id}-name`}>{words.t('page.grow.file')}</label>
        <input id={`${id}-name`} name="name" type="text" dir="ltr" required maxLength={40} pattern="[a-z][a-z0-9]*(-[a-z0-9]+)*" value={name} onChange={(event) => { setName(event.target.value); }} />
        {told !== null && <pre className="told" role="alert" lang="en" dir="ltr">{told}</pre>}
        <button type="submit" disabled={isBusy || name === '' || title.trim() === ''}>{words.t('page.grow.make')}</button>
      </form>
    </details>
  );
}
