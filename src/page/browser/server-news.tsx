import type { ReactNode } from 'react';
import { useWords } from './words.tsx';
import type { Aliveness, Marks } from './use-alive.ts';

interface ServerNewsProps {
  readonly aliveness: Aliveness;
  /** The marks of the files as this page has read them. */
  readonly marks: Marks;
  /** The page is only to be looked at where it may not. */
  readonly mayChange: boolean;
  readonly onRead: () => Promise<void>;
}

/** That the program is gone, or that somebody has changed its files: told when it happens, not only when something is to be saved. */
export function ServerNews({ aliveness, marks, mayChange, onRead }: ServerNewsProps): ReactNode {
  const words = useWords();
  const now = aliveness.marks;
  const moved = now === null ? [] : [...new Set([...Object.keys(now), ...Object.keys(marks)])].filter((path) => now[path] !== marks[path]);
  if (!aliveness.isAlive) return <div className="told news" role="alert"><p>{words.t('page.server.gone')}</p></div>;
  if (moved.length === 0) return mayChange ? null : <p className="reminder read-only">{words.t('page.server.read-only')}</p>;
  return (
    <div className="told news" role="alert">
      <p>{words.t('page.server.changed', { file: moved.join(', ') })}</p>
      <p><button type="button" onClick={() => { void onRead(); }}>{words.t('page.server.read-keep')}</button></p>
    </div>
  );
}
