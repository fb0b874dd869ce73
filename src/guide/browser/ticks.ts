import { all, mark, one, onPress } from './elements.ts';
import type { Memory } from './memory.ts';
import type { Speech } from './speech.ts';

/** Which steps are done, and how often where a step is done several times. */
export interface Ticks {
  /** Shows the state of a page's step at the button, and remembers the page. */
  readonly show: (page: Element) => void;
}

export function newTicks(memory: Memory, speech: Speech): Ticks {
  const done: Record<string, number> = {};
  for (const page of all('.page[data-times]')) {
    const count = memory.done[page.id] || 0;
    if (count > 0) done[page.id] = Math.min(count, timesOf(page));
  }
  let shown: Element = one('.page');

  const refresh = (): void => {
    const times = timesOf(shown);
    const count = done[shown.id] || 0;
    button.disabled = times === 0;
    button.setAttribute('aria-pressed', String(times > 0 && count === times));
    mark(button, 'full', times > 0 && count === times);
    one('.tally', button).textContent = times > 1 ? `${count}/${times}` : '';
    for (const entry of all('#all a')) {
      const page = document.getElementById((entry.getAttribute('href') || '').slice(1));
      if (page === null) continue;
      mark(entry, 'full', timesOf(page) > 0 && (done[page.id] || 0) === timesOf(page));
      mark(entry, 'here', page === shown);
      if (page === shown) entry.setAttribute('aria-current', 'page');
      else entry.removeAttribute('aria-current');
    }
  };

  const button = onPress('tick', () => {
    const times = timesOf(shown);
    done[shown.id] = ((done[shown.id] || 0) + 1) % (times + 1);
    memory.keep(shown.id, done);
    refresh();
    speech.speak(`${one('.heard', button).textContent || ''} ${done[shown.id] || 0}/${times}`);
  });

  return {
    show: (page) => {
      shown = page;
      memory.keep(page.id, done);
      refresh();
    },
  };
}

/** How often the page's step is done; 0 for a page without a step. */
const timesOf = (page: Element): number => Number(page.getAttribute('data-times') || 0);
