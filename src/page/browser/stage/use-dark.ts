import { useSyncExternalStore } from 'react';

const dark = (): MediaQueryList => matchMedia('(prefers-color-scheme: dark)');

/** Whether the reader wants dark pages. */
export const useDark = (): boolean => useSyncExternalStore((changed) => {
  const query = dark();
  query.addEventListener('change', changed);
  return () => { query.removeEventListener('change', changed); };
}, () => dark().matches);
