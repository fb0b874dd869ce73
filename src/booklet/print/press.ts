import type { Browser, Page } from 'puppeteer';
import { launch } from './launch.ts';
import { prepareTab } from './tab.ts';
import type { ChosenBrowser } from './types.ts';

/** Runs work in a browser's one tab, one after the other; a browser that died is started again, once for each work. */
export interface Press {
  run<T>(work: (tab: Page) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

interface Session { readonly browser: Browser; readonly tab: Page }

export async function openPress(chosen: ChosenBrowser, langs: readonly string[], timeout: number): Promise<Press> {
  let session = await openSession(chosen, langs, timeout);
  let last: Promise<unknown> = Promise.resolve();

  const twice = async <T>(work: (tab: Page) => Promise<T>): Promise<T> => {
    try {
      return await work(session.tab);
    } catch (error) {
      if (!lost(session, error)) throw error;
      await session.browser.close().catch(() => undefined);
      session = await openSession(chosen, langs, timeout);
      return work(session.tab);
    }
  };
  return {
    run(work) {
      const done = last.then(() => twice(work));
      last = done.catch(() => undefined);
      return done;
    },
    async close() {
      await last;
      await session.browser.close();
    },
  };
}

async function openSession(chosen: ChosenBrowser, langs: readonly string[], timeout: number): Promise<Session> {
  const browser = await launch(chosen, timeout);
  try {
    const tab = await browser.newPage();
    await prepareTab(tab, langs);
    return { browser, tab };
  } catch (error) {
    await browser.close();
    throw error;
  }
}

function lost({ browser, tab }: Session, error: unknown): boolean {
  const reason = error instanceof Error ? `${error.name} ${error.message}` : '';
  return !browser.connected || tab.isClosed() || /TimeoutError|timed out|Target closed|detached/i.test(reason);
}
