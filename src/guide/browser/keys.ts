import type { Near } from './near.ts';
import type { Pages } from './pages.ts';
import type { Panels } from './panels.ts';

/** Arrows turn pages, in the closer view they move; plus and minus enlarge, Escape leaves. */
export function listenToKeys(pages: Pages, panels: Panels, near: Near): void {
  document.addEventListener('keydown', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const taken = panels.isOpen() ? inPanel(event.key, panels, near) : onPages(event.key, pages);
    if (taken) event.preventDefault();
  });
}

function onPages(key: string, pages: Pages): boolean {
  const onwards = document.documentElement.dir === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
  if (key === onwards || key === 'PageDown') pages.next();
  else if (key === 'ArrowLeft' || key === 'ArrowRight' || key === 'PageUp') pages.previous();
  else return false;
  return true;
}

function inPanel(key: string, panels: Panels, near: Near): boolean {
  if (key === 'Escape') panels.close();
  else if (!near.isOpen()) return false;
  else if (key === '+' || key === '=') near.enlarge(1.4);
  else if (key === '-') near.enlarge(1 / 1.4);
  else if (key === 'ArrowLeft') near.push(-40, 0);
  else if (key === 'ArrowRight') near.push(40, 0);
  else if (key === 'ArrowUp') near.push(0, -40);
  else if (key === 'ArrowDown') near.push(0, 40);
  else return false;
  return true;
}
