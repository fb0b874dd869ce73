import type { Page } from 'puppeteer';

/** Signs that turn what follows the other way round until their line or element ends (UAX #9). */
export const TURNED = '\u202eturned\u2067';

/** A text without blanks and without signs that are not seen. */
export const bare = (text: string): string => text.replaceAll(/[\s\u202a-\u202e\u2066-\u2069\u00ad\u200b]/g, '');

/**
 * For each text of the page that holds such signs and is shown, whether an element holds them, so that what stands beside
 * it stays as it is: the nearest that is a block or isolated is no more than the sentence or the control they stand in. One
 * that holds blocks itself is told by its text.
 */
export const heldTurns = (page: Page): Promise<readonly string[]> => page.evaluate(() => {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const text = node.textContent ?? '';
    if (!/\u202e/.test(text) || (node.parentElement?.getClientRects().length ?? 0) === 0) continue;
    let element = node.parentElement;
    while (element !== null && getComputedStyle(element).display === 'inline' && !/isolate/.test(getComputedStyle(element).unicodeBidi)) element = element.parentElement;
    const within = [...element?.querySelectorAll('*') ?? []].filter((each) => each.getClientRects().length > 0 && /^(block|flex|grid|list-item|table)/.test(getComputedStyle(each).display) && each.textContent !== '');
    found.push(element !== null && (within.length === 0 || element.matches('button, label')) ? 'held' : `${element?.tagName ?? ''} ${(element?.textContent ?? '').slice(-80)}`);
  }
  return found;
});
