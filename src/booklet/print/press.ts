import type { Page } from 'puppeteer';
import { MachineFault } from '../../read/machine-fault.ts';
import { launchPatiently, type RunningBrowser } from './launch.ts';
import { newPatience, type Patience } from './patience.ts';
import { prepareTab } from './tab.ts';
import type { ChosenBrowser } from './types.ts';

/** Work in a tab, and how long it may wait for one answer of the browser, ms. */
export type TabWork<T> = (tab: Page, timeout: number) => Promise<T>;

/** Runs work in a browser's one tab, one after the other. A browser that hangs or dies is replaced, and the work done again. */
export interface Press {
  run<T>(work: TabWork<T>): Promise<T>;
  close(): Promise<void>;
}

interface Session {
  readonly running: RunningBrowser;
  readonly tab: Page;
  readonly timeout: number;
  /** Fails when the tab dies: what it was asked is then never answered. Never comes otherwise. */
  readonly died: Promise<never>;
}

/** Browsers tried for one work. */
const TRIES = 3;

export async function openPress(chosen: ChosenBrowser, langs: readonly string[], timeout: number): Promise<Press> {
  let session = await openSession(chosen, langs, newPatience(timeout));
  let last: Promise<unknown> = Promise.resolve();

  const attempted = async <T>(work: TabWork<T>): Promise<T> => {
    const patience = newPatience(timeout);
    for (let tries = 1; ; tries++) {
      try {
        return await Promise.race([work(session.tab, session.timeout), session.died]);
      } catch (error) {
        if (!lost(session, error)) throw error;
        if (tries === TRIES) throw new MachineFault(`the browser ${chosen.path} was lost ${TRIES} times over one work: ${reasonOf(error)}; would help: more free memory, or another browser`, { cause: error });
        await session.running.end();
        patience.grow('work');
        session = await openSession(chosen, langs, patience);
      }
    }
  };
  return {
    run(work) {
      const done = last.then(() => attempted(work));
      last = done.catch(() => undefined);
      return done;
    },
    async close() {
      await last;
      await session.running.end();
    },
  };
}

async function openSession(chosen: ChosenBrowser, langs: readonly string[], patience: Patience): Promise<Session> {
  for (let tries = 1; ; tries++) {
    const running = await launchPatiently(chosen, patience);
    try {
      const tab = await running.browser.newPage();
      const died = new Promise<never>((_, reject) => { tab.on('error', reject); });
      died.catch(() => undefined);
      await Promise.race([prepareTab(tab, langs), died]);
      return { running, tab, timeout: patience.wait, died };
    } catch (error) {
      await running.end();
      patience.grow('work');
      if (tries === TRIES) throw new MachineFault(`the browser ${chosen.path} starts and is lost: ${reasonOf(error)}; would help: more free memory, or another browser`, { cause: error });
    }
  }
}

function lost({ running, tab }: Session, error: unknown): boolean {
  return !running.browser.connected || tab.isClosed() || /TimeoutError|timed out|Target closed|detached|Page crashed/i.test(reasonOf(error));
}

const reasonOf = (error: unknown): string => (error instanceof Error ? `${error.name} ${error.message}` : String(error));
