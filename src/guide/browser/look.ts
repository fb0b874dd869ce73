import { mark, onPress } from './elements.ts';
import type { Memory } from './memory.ts';

/** Light or dark, and the size of everything. */
export interface Look {
  readonly dark: () => boolean;
  /** Size of running text of the language against Latin. */
  readonly setTextScale: (scale: number) => void;
}

/** Per cent of the browser's own size of words. */
const SIZES = [100, 125, 150, 175, 200];

export function newLook(memory: Memory): Look {
  const root = document.documentElement;
  const asked = window.matchMedia('(prefers-color-scheme: dark)');
  let dark = memory.choice('dark') === '' ? asked.matches : memory.choice('dark') === 'yes';
  let size = Math.max(0, SIZES.indexOf(Number(memory.choice('size'))));
  const apply = (): void => {
    mark(root, 'dark', dark);
    root.style.fontSize = `${SIZES[size] || 100}%`;
  };
  const resize = (by: number): void => {
    size = Math.min(SIZES.length - 1, Math.max(0, size + by));
    memory.choose('size', String(SIZES[size]));
    apply();
  };
  onPress('larger-words', () => { resize(1); });
  onPress('smaller-words', () => { resize(-1); });
  onPress('light', () => {
    dark = !dark;
    memory.choose('dark', dark ? 'yes' : 'no');
    apply();
  });
  apply();
  return {
    dark: () => dark,
    setTextScale: (scale) => { root.style.setProperty('--words', String(scale)); },
  };
}
