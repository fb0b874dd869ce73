/// <reference lib="dom.iterable" />
import type { CDPSession, Page } from 'puppeteer';
import type { PageFault } from './types.ts';

/** Stands for the face of a letter that no font has: an empty box. */
const NO_FACE = 'none';

interface OwnText { readonly at: string; readonly text: string }

/**
 * Text that is not set in our fonts: letters they do not cover, and faces that the browser took
 * from the system (it is asked about single elements only when there are any).
 */
export async function foreignFaces(tab: Page, covered: (codePoint: number) => boolean): Promise<readonly PageFault[]> {
  const texts = await ownTexts(tab);
  const bare = texts.filter(({ text }) => [...text].some((letter) => !covered(letter.codePointAt(0) ?? 0)));
  return [
    ...bare.map(({ at, text }) => fault(at, [...text].filter((letter) => !covered(letter.codePointAt(0) ?? 0)).join(''), NO_FACE)),
    ...await withSession(tab, (session) => systemFaces(session, texts)),
  ];
}

const fault = (at: string, text: string, face: string): PageFault => ({ kind: 'face', at, text: text.slice(0, 80), face });

async function systemFaces(session: CDPSession, texts: readonly OwnText[]): Promise<readonly PageFault[]> {
  const anywhere = await facesIn(session, 'body');
  if (anywhere.length === 0) return [];
  const faults: PageFault[] = [];
  for (const [index, { at, text }] of texts.entries()) {
    const faces = await facesIn(session, `[data-measured="${index}"]`);
    faults.push(...faces.map((face) => fault(at, text, face)));
  }
  return faults;
}

/** Each element with text of its own, marked by its number; the next document wipes the marks away. */
function ownTexts(tab: Page): Promise<readonly OwnText[]> {
  return tab.evaluate(() => [...document.body.querySelectorAll('*')].flatMap((element) => {
    const text = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.textContent ?? '').join('');
    return text.trim() === '' ? [] : [{ element, text: text.replace(/\s+/g, ' ').trim() }];
  }).map(({ element, text }, index) => {
    element.setAttribute('data-measured', String(index));
    return { at: [element.localName, ...element.classList].join('.'), text };
  }));
}

/** Faces from outside our fonts that an element's text, with all below it, is really set in. */
async function facesIn(session: CDPSession, selector: string): Promise<readonly string[]> {
  const { root } = await session.send('DOM.getDocument', { depth: 0 });
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector });
  const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId });
  return fonts.filter(({ isCustomFont }) => !isCustomFont).map(({ familyName }) => familyName);
}

async function withSession<T>(tab: Page, work: (session: CDPSession) => Promise<T>): Promise<T> {
  const session = await tab.createCDPSession();
  try {
    await session.send('DOM.enable');
    await session.send('CSS.enable');
    return await work(session);
  } finally {
    await session.detach();
  }
}
