import { all, mark, one, onPress } from './elements.ts';
import { fillFrame } from './fill-frame.ts';
import type { Memory } from './memory.ts';

export interface Pages {
  readonly current: () => HTMLElement;
  readonly next: () => void;
  readonly previous: () => void;
  /** Shows the page of the address, else the remembered one, else the first. */
  readonly begin: () => void;
}

/** Shows one page at a time; `shown` hears of each. */
export function newPages(memory: Memory, shown: (page: HTMLElement) => void): Pages {
  const pages = all('.page');
  const frame = one('#pages');
  let index = 0;

  const show = (wanted: number): void => {
    const page = pages[wanted];
    if (page === undefined) return;
    const hadFocus = frame.contains(document.activeElement);
    index = wanted;
    pages.forEach((other) => { mark(other, 'shown', other === page); });
    frame.scrollTop = 0;
    if (hadFocus) frame.focus();
    next.disabled = wanted === pages.length - 1;
    previous.disabled = wanted === 0;
    tellAddress(page.id);
    tellPlace(wanted + 1, pages.length);
    shown(page);
    all<SVGSVGElement>('.drawing svg', page).forEach(fillFrame);
  };
  const place = (id: string): number => pages.findIndex((page) => page.id === id);

  const next = onPress('next', () => { show(index + 1); });
  const previous = onPress('previous', () => { show(index - 1); });
  window.addEventListener('hashchange', () => { show(place(location.hash.slice(1))); });

  return {
    current: () => pages[index] || frame,
    next: () => { show(index + 1); },
    previous: () => { show(index - 1); },
    begin: () => {
      const wanted = [location.hash.slice(1), memory.page].map(place).filter((found) => found >= 0);
      show(wanted[0] || 0);
    },
  };
}

/** Tells how far the pages are turned. */
function tellPlace(number: number, count: number): void {
  const text = `${number} / ${count}`;
  one('.pages-of').textContent = text;
  one('.place').setAttribute('aria-label', text);
  one('.reached').style.width = `${(100 * number) / count}%`;
}

/** Keeps the page in the address, so that a phone that remembers nothing still finds it when the page is loaded anew. */
function tellAddress(id: string): void {
  try {
    history.replaceState(history.state, '', `#${id}`);
  } catch {
    // Some viewers of files allow no change of the address.
  }
}
