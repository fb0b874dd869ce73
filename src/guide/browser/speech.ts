import type { GuideData } from '../data.ts';
import { all, mark, one } from './elements.ts';
import type { Look } from './look.ts';
import type { Memory } from './memory.ts';

/** The language of the page. Until one is picked there are no words to see, only names for those who hear the page. */
export interface Speech {
  /** Tells those who hear the page what has changed. */
  readonly speak: (text: string) => void;
}

export function newSpeech({ languages, texts }: GuideData, memory: Memory, look: Look): Speech {
  const root = document.documentElement;
  const buttons = all('[data-language]');
  const spoken = one('#spoken');

  const use = (index: number, worded: boolean): void => {
    const language = languages[index];
    const says = texts[index];
    if (language === undefined || says === undefined) return;
    root.lang = language.tag;
    root.dir = language.direction;
    look.setTextScale(language.textScale);
    mark(root, 'worded', worded);
    all('[data-say]').forEach((element) => { element.textContent = says[Number(element.getAttribute('data-say'))] || ''; });
    all('[data-label]').forEach((element) => { element.setAttribute('aria-label', says[Number(element.getAttribute('data-label'))] || ''); });
    buttons.forEach((button) => {
      const chosen = button.getAttribute('data-language') === (worded ? String(index) : '');
      mark(button, 'chosen', chosen);
      button.setAttribute('aria-pressed', String(chosen));
    });
  };

  let current = firstLanguage(languages, memory.choice('language'));
  use(current, memory.choice('worded') === 'yes');
  buttons.forEach((button) => {
    button.addEventListener('click', () => {
      const picked = button.getAttribute('data-language') || '';
      if (picked !== '') current = Number(picked);
      const language = languages[current];
      if (language !== undefined) memory.choose('language', language.tag);
      memory.choose('worded', picked === '' ? 'no' : 'yes');
      use(current, picked !== '');
    });
  });
  return { speak: (text) => { spoken.textContent = text; } };
}

/** The remembered language, else one that the phone is set to, else the first. */
function firstLanguage(languages: GuideData['languages'], remembered: string): number {
  const wished = [remembered].concat(navigator.languages || [navigator.language]);
  for (const wish of wished) {
    const exact = languages.findIndex(({ tag }) => tag === wish);
    const near = languages.findIndex(({ tag }) => tag === wish.split('-')[0]);
    if (exact >= 0 || near >= 0) return exact >= 0 ? exact : near;
  }
  return 0;
}
