import type { GuideData } from '../data.ts';
import { one } from './elements.ts';
import { listenToKeys } from './keys.ts';
import { newLook } from './look.ts';
import { newMemory } from './memory.ts';
import { newNear } from './near.ts';
import { newPages } from './pages.ts';
import { newPanels } from './panels.ts';
import { listenToSwipes } from './swipe.ts';
import { newTicks } from './ticks.ts';
import { newSpeech } from './speech.ts';

/** The guide in the phone: what the static pages show at once, one by one. */
function start(): void {
  const data = JSON.parse(one('#data').textContent || '') as GuideData;
  const memory = newMemory(data.memory);
  const look = newLook(memory);
  const speech = newSpeech(data, memory, look);
  const ticks = newTicks(memory, speech);
  const panels = newPanels();
  const pages = newPages(memory, (page) => {
    panels.closeAll();
    ticks.show(page);
    near.offer(page);
    speech.speak(page.getAttribute('aria-label') || '');
  });
  const near = newNear(data.solids, panels, look, pages.current);
  listenToSwipes(one('#pages'), pages, near);
  listenToKeys(pages, panels, near);
  document.documentElement.classList.add('on');
  look.apply();
  pages.begin();
}

start();
