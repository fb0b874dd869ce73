/** A matrix of PDF: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

interface Token { readonly text: string; readonly start: number; readonly end: number }

/** Strings, dictionaries, names, brackets, comments, then numbers and operators (ISO 32000-1, 7.2 and 7.8.2). */
const TOKEN = /\((?:\\[\s\S]|[^\\()])*\)|<<|>>|<[0-9A-Fa-f\s]*>|\/[^\s()<>[\]{}/%]*|[[\]]|%[^\r\n]*|[^\s()<>[\]{}/%]+/g;

const PAINTS = new Set(['f', 'f*', 'F', 'S', 's', 'B', 'B*', 'b', 'b*', 'Tj', 'TJ', "'", '"', 'Do', 'sh', 'BI']);

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/**
 * Walks a page's content and puts something else where a marked rectangle is painted.
 * `fill` answers with operators, or undefined to leave the rectangle alone.
 */
export function fillMarkedRectangles(content: string, fill: (rectangle: MarkedRectangle) => string | undefined): string {
  const out: string[] = [];
  let kept = 0;
  for (const rectangle of markedRectangles(content)) {
    const instead = fill(rectangle);
    if (instead === undefined) continue;
    out.push(content.slice(kept, rectangle.start), instead);
    kept = rectangle.end;
  }
  return out.join('') + content.slice(kept);
}

/** Whether a page's content puts any mark on the paper. */
export function paintsSomething(content: string): boolean {
  for (const { text } of tokens(content)) if (PAINTS.has(text)) return true;
  return false;
}

/** Whether text shows glyph 0, by convention the box for a letter the font lacks. Our fonts' glyphs are numbered in two bytes. */
export function showsMissingGlyph(content: string): boolean {
  for (const { text } of tokens(content)) {
    if (/^<(?:[0-9A-F]{4})*>$/i.test(text) && text.slice(1, -1).match(/.{4}/g)?.includes('0000')) return true;
  }
  return false;
}

/** The numbers of a page's marked content, each with whether text is shown in it. */
export function markedContent(content: string): ReadonlyMap<number, boolean> {
  const found = new Map<number, boolean>();
  const open: (number | undefined)[] = [];
  for (const { text, operands } of operators(content)) {
    if (text === 'BMC') open.push(open.at(-1));
    else if (text === 'BDC') open.push(mcidOf(operands) ?? open.at(-1));
    else if (text === 'EMC') open.pop();
    const mcid = open.at(-1);
    if (mcid !== undefined) found.set(mcid, found.get(mcid) === true || SHOWS_TEXT.has(text));
  }
  return found;
}

/** Makes marked content of these numbers artifacts: marks on the page that belong to no text and no picture (ISO 32000-1, 14.8.2.2). */
export function asArtifacts(content: string, mcids: ReadonlySet<number>): string {
  const out: string[] = [];
  let kept = 0;
  for (const { text, operands, start, end } of operators(content)) {
    const mcid = text === 'BDC' ? mcidOf(operands) : undefined;
    if (mcid === undefined || !mcids.has(mcid)) continue;
    out.push(content.slice(kept, operands[0]?.start ?? start), '/Artifact BMC');
    kept = end;
  }
  return out.join('') + content.slice(kept);
}

const SHOWS_TEXT = new Set(['Tj', 'TJ', "'", '"']);

interface Operator extends Token { readonly operands: readonly Token[] }

function* operators(content: string): Generator<Operator> {
  let operands: Token[] = [];
  for (const token of tokens(content)) {
    if (isOperand(token.text)) { operands.push(token); continue; }
    yield { ...token, operands };
    operands = [];
  }
}

/** A rectangle from (0, 0) that is filled inside marked content. */
export interface MarkedRectangle {
  /** Number of the marked content on its page. */
  readonly mcid: number;
  /** From the rectangle's own coordinates to the page's points. */
  readonly toPage: Matrix;
  /** In the rectangle's own coordinates. */
  readonly width: number;
  readonly height: number;
  /** Where its operators stand in the content. */
  readonly start: number;
  readonly end: number;
}

function* markedRectangles(content: string): Generator<MarkedRectangle> {
  const saved: Matrix[] = [];
  const marks: (number | undefined)[] = [];
  let toPage = IDENTITY;
  let rectangle: readonly Token[] = [];
  for (const { operands, ...token } of operators(content)) {
    const mcid = marks.at(-1);
    switch (token.text) {
      case 'q': saved.push(toPage); break;
      case 'Q': toPage = saved.pop() ?? IDENTITY; break;
      case 'cm': toPage = multiply(matrixOf(operands), toPage); break;
      case 'BMC': marks.push(undefined); break;
      case 'BDC': marks.push(mcidOf(operands)); break;
      case 'EMC': marks.pop(); break;
      case 're': rectangle = operands; break;
      case 'f': case 'f*':
        if (mcid !== undefined && rectangle.length === 4) yield { mcid, toPage, ...extent(rectangle, token) };
        rectangle = [];
        break;
    }
  }
}

function extent(rectangle: readonly Token[], paint: Token): Pick<MarkedRectangle, 'width' | 'height' | 'start' | 'end'> {
  const [, , width, height] = rectangle.map(({ text }) => Number(text));
  return { width: width ?? 0, height: height ?? 0, start: rectangle[0]?.start ?? paint.start, end: paint.end };
}

function* tokens(content: string): Generator<Token> {
  for (const match of content.matchAll(TOKEN)) {
    if (match[0].startsWith('%')) continue;
    yield { text: match[0], start: match.index, end: match.index + match[0].length };
  }
}

function isOperand(text: string): boolean {
  return /^[-+.\d(<>/[\]]/.test(text) || text === 'true' || text === 'false' || text === 'null';
}

function mcidOf(operands: readonly Token[]): number | undefined {
  const at = operands.findIndex(({ text }) => text === '/MCID');
  const value = operands[at + 1]?.text;
  return at < 0 || value === undefined ? undefined : Number(value);
}

function matrixOf(operands: readonly Token[]): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = operands.slice(-6).map(({ text }) => Number(text));
  return [a, b, c, d, e, f];
}

/** First `one`, then `two`. */
function multiply(one: Matrix, two: Matrix): Matrix {
  const [a, b, c, d, e, f] = one;
  const [A, B, C, D, E, F] = two;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

/** The upright box round a rectangle from (0, 0) to (width, height) after a matrix: left, bottom, right, top. */
export function boxAfter(matrix: Matrix, width: number, height: number): readonly [number, number, number, number] {
  const [a, b, c, d, e, f] = matrix;
  const xs = [e, a * width + e, c * height + e, a * width + c * height + e];
  const ys = [f, b * width + f, d * height + f, b * width + d * height + f];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
