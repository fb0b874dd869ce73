import MarkdownIt from 'markdown-it';
import { FaultError, firstUnseen, withoutUnseen } from '../../read/index.ts';

/** A paragraph or an entry of a list, as HTML that is safe to print, and its plain text for measuring. */
export interface NoteBlock {
  readonly kind: 'paragraph' | 'entry';
  /** What stands before an entry: a dash, or its number. */
  readonly sign: string;
  readonly html: string;
  readonly text: string;
}

/** A trainer's notes on one item: first what goes for all of it, then by step. */
export interface Notes {
  readonly general: readonly NoteBlock[];
  /** By heading: the key of a step (`wrap-side:left`), or its action (`wrap-side`), for all steps that do it. */
  readonly bySteps: ReadonlyMap<string, readonly NoteBlock[]>;
}

/**
 * Paragraphs, lists and stress; nothing else of Markdown, so that a note can neither bring its own HTML nor fetch a
 * picture, and needs no font but the text's.
 */
const reader = new MarkdownIt('zero', { html: false, linkify: false }).enable(['heading', 'list', 'emphasis', 'escape', 'entity', 'newline']);

/** Of one file. Ours: ten times what fills a trainer's pages, low enough that a hostile file cannot stall the reader. */
const MOST_CHARACTERS = 100_000;

type Token = ReturnType<typeof reader.parse>[number];

const shapes = 'paragraphs, lists and **stress** under headings such as ## wrap-side';

/**
 * Reads a file of notes. `file` is for messages, `keys` are the keys and actions of the item's steps.
 * Throws a FaultError with file, line and column for a heading that names no step, stands twice or is of another level.
 */
export function readNotes(file: string, text: string, keys: Pick<ReadonlySet<string>, 'has' | typeof Symbol.iterator>): Notes {
  const sections = new Map<string, NoteBlock[]>();
  const general: NoteBlock[] = [];
  let into = general;
  const fail = (line: number, found: string, remedy: string): never => {
    throw new FaultError([{ position: { file, line: line + 1, column: 1 }, field: '', found, remedy }]);
  };
  if (text.length > MOST_CHARACTERS) fail(0, `${text.length} characters`, `a file of at most ${MOST_CHARACTERS} characters`);
  const unseen = firstUnseen(text);
  if (unseen !== null) fail(text.slice(0, unseen.at).split('\n').length - 1, unseen.sign, withoutUnseen);
  const tokens = reader.parse(text, {});
  tokens.forEach((token, index) => {
    if (token.type === 'heading_open') {
      const name = tokens[index + 1]?.content ?? '';
      const line = token.map?.[0] ?? 0;
      if (token.tag !== 'h2') fail(line, `${token.markup} ${name}`, shapes);
      if (!keys.has(name)) fail(line, `## ${name}`, `the key of a step or its action, one of ${[...keys].join(', ')}`);
      if (sections.has(name)) fail(line, `## ${name} a second time`, 'one heading for each step');
      sections.set(name, into = []);
    } else if (token.type === 'inline' && tokens[index - 1]?.type !== 'heading_open') {
      into.push(blockOf(tokens, index, token));
    }
  });
  return { general, bySteps: sections };
}

function blockOf(tokens: readonly Token[], index: number, token: Token): NoteBlock {
  const sign = signOf(tokens.slice(0, index));
  return {
    kind: sign === '' ? 'paragraph' : 'entry',
    sign,
    html: apart(reader.renderer.renderInline(token.children ?? [], reader.options, {})),
    text: (token.children ?? []).map(({ type, content }) => (type === 'softbreak' || type === 'hardbreak' ? ' ' : content)).join(''),
  };
}

/** The sign of the list entry that a text opens: its first paragraph alone has it. */
function signOf(before: readonly Token[]): string {
  const [paragraph, entry] = [before.at(-1), before.at(-2)];
  if (paragraph?.type !== 'paragraph_open' || entry?.type !== 'list_item_open') return '';
  return entry.info === '' ? '–' : `${entry.info}.`;
}

/** A measure keeps its order in right-to-left text: number and unit stand in a span of their own. Only text is touched, not tags. */
const measure = /\d+(?:[.,]\d+)?(?:(?:\s|&nbsp;)?[×x](?:\s|&nbsp;)?\d+(?:[.,]\d+)?)*(?:[\s\u00a0](?:mm|cm|m|kg|g|N|kN|min|h|s|°C)(?![\p{L}\p{N}]))?/gu;

const apart = (html: string): string => html.split(/(<[^>]*>|&[#\w]+;)/).map((piece, index) =>
  (index % 2 === 1 ? piece : piece.replace(measure, (found) => `<span dir="ltr" class="apart">${found}</span>`))).join('');
