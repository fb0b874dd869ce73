import { all, one, onPress } from './elements.ts';

/** Panels that cover the pages: the overview, the languages, the closer view. The phone's own back key closes them. */
export interface Panels {
  readonly open: (id: PanelName, closed?: () => void) => void;
  readonly close: () => void;
  /** Closes without a word to the history: another page is to be shown. */
  readonly closeAll: () => void;
  readonly isOpen: () => boolean;
}

export type PanelName = 'all' | 'words' | 'near';

export function newPanels(): Panels {
  const covered = [one('#pages'), one('.foot'), one('.corner')];
  let open: HTMLElement | null = null;
  let onClosed: () => void = () => undefined;
  let opener: Element | null = null;

  const hide = (): void => {
    if (open === null) return;
    open.hidden = true;
    open = null;
    covered.forEach((element) => { element.hidden = false; });
    onClosed();
    if (opener instanceof HTMLElement) opener.focus();
  };
  const close = (): void => {
    if (open === null) return;
    if (history.state === OPEN) history.back();
    else hide();
  };
  const show = (id: PanelName, closed: () => void = () => undefined): void => {
    hide();
    const panel = one(`#${id}`);
    opener = document.activeElement;
    open = panel;
    onClosed = closed;
    panel.hidden = false;
    covered.forEach((element) => { element.hidden = true; });
    one('.leave', panel).focus();
    if (history.state !== OPEN) remember();
  };

  one('#all').hidden = true;
  if (history.state === OPEN) history.replaceState(null, '');
  window.addEventListener('popstate', hide);
  all('.leave').forEach((button) => { button.addEventListener('click', close); });
  onPress('open-all', () => { show('all'); });
  onPress('open-words', () => { show('words'); });
  all('[data-opens]').forEach((button) => { button.addEventListener('click', () => { show('words'); }); });
  return { open: show, close, closeAll: hide, isOpen: () => open !== null };
}

/** Marks the entry of the history that stands for an open panel. */
const OPEN = 'panel';

function remember(): void {
  try {
    history.pushState(OPEN, '');
  } catch {
    // Then the panel closes by its own button alone.
  }
}
