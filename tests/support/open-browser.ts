import puppeteer, { type Browser } from 'puppeteer';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';
import { SLOWEST } from './waiting.ts';

/** The browser that prints, or another program in its place with the same arguments and variables, as long as it may take to start. */
export async function openBrowser(program?: string): Promise<Browser> {
  const { path, args, env } = await chooseBrowser();
  return puppeteer.launch({ executablePath: program ?? path, args: [...args], env: { ...env }, headless: 'shell', timeout: SLOWEST, protocolTimeout: SLOWEST });
}
