import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A node of the structure as pdf.js reads it, with the language that holds there. */
export interface StructureNode {
  readonly role: string;
  readonly lang: string;
  readonly alt?: string;
  readonly children: readonly StructureNode[];
  /** Text of the marked content that the node holds itself. */
  readonly text: string;
}

/** A PDF as pdf.js reads it: other code than made it. */
export interface SecondReading {
  readonly title: string;
  readonly language: string;
  readonly marked: boolean;
  readonly direction: string;
  /** The structure of each page, in order. */
  readonly pages: readonly StructureNode[];
  /** Marked content that no element owns, and text that stands in none. */
  readonly untied: readonly string[];
}

interface RawNode { readonly role?: string; readonly lang?: string; readonly alt?: string; readonly children?: readonly RawNode[]; readonly type?: string; readonly id?: string }
interface RawItem { readonly str?: string; readonly hasEOL?: boolean; readonly type?: string; readonly id?: string | null; readonly tag?: string }

export async function readAgain(bytes: Uint8Array): Promise<SecondReading> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, disableFontFace: true, useSystemFonts: false });
  const pdf = await task.promise;
  const { info } = await pdf.getMetadata() as { info: { Title?: string; Language?: string } };
  const language = info.Language ?? '';
  const pages: StructureNode[] = [];
  const untied: string[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const { texts, loose } = textsByMark(items as readonly RawItem[]);
    const tree = await page.getStructTree() as RawNode;
    const owned = new Set(contentIds(tree));
    untied.push(...loose.map((text) => `page ${number}: "${text}"`), ...[...texts.keys()].filter((id) => !owned.has(id)).map((id) => `page ${number}: ${id} "${texts.get(id) ?? ''}"`));
    pages.push(nodeOf(tree, language, texts));
  }
  const [marks, preferences] = [await pdf.getMarkInfo() as { Marked?: boolean } | null, await pdf.getViewerPreferences() as { Direction?: string } | null];
  await task.destroy();
  return { title: info.Title ?? '', language, marked: marks?.Marked === true, direction: preferences?.Direction ?? 'L2R', pages, untied };
}

/** Text by the id of the marked content it stands in; `loose` is what stands in none and in no artifact. */
function textsByMark(items: readonly RawItem[]): { readonly texts: ReadonlyMap<string, string>; readonly loose: readonly string[] } {
  const texts = new Map<string, string>();
  const loose: string[] = [];
  const open: (string | null)[] = [];
  for (const { type, id, tag, str } of items) {
    if (type === 'beginMarkedContentProps' || type === 'beginMarkedContent') {
      const mark = id ?? (tag === 'Artifact' ? 'artifact' : open.at(-1) ?? null);
      if (mark !== null && mark !== 'artifact') texts.set(mark, texts.get(mark) ?? '');
      open.push(mark);
    } else if (type === 'endMarkedContent') open.pop();
    else if (str !== undefined && str !== '') {
      const mark = open.at(-1) ?? null;
      if (mark === null && str.trim() !== '') loose.push(str);
      if (mark !== null && mark !== 'artifact') texts.set(mark, (texts.get(mark) ?? '') + str);
    }
  }
  return { texts, loose };
}

function contentIds(node: RawNode): readonly string[] {
  return [...(node.type === 'content' && node.id !== undefined ? [node.id] : []), ...(node.children ?? []).flatMap(contentIds)];
}

function nodeOf(node: RawNode, around: string, texts: ReadonlyMap<string, string>): StructureNode {
  const lang = node.lang ?? around;
  const children = node.children ?? [];
  return {
    role: node.role ?? '',
    lang,
    ...(node.alt === undefined ? {} : { alt: node.alt }),
    children: children.filter((child) => child.type === undefined).map((child) => nodeOf(child, lang, texts)),
    text: children.filter((child) => child.type === 'content').map((child) => texts.get(child.id ?? '') ?? '').join(''),
  };
}

/** A node and all below it, in reading order. */
export function allNodes(node: StructureNode): readonly StructureNode[] {
  return [node, ...node.children.flatMap(allNodes)];
}

/** Whether Debian's qpdf is here; tests that use it are shown as skipped where it is not. */
export const hasQpdf = spawnSync('qpdf', ['--version']).error === undefined;

/** What qpdf finds wrong with a file's syntax; empty when nothing. */
export function qpdfFaults(bytes: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), 'print-test-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, bytes);
    const { status, stdout, stderr } = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
    return status === 0 ? '' : stdout + stderr;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
