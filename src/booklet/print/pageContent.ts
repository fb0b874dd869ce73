import { textIn, type Operator, type PageContent, type Span } from './operators.ts';

/** A matrix of PDF: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

const PAINTS = new Set(['f', 'f*', 'F', 'S', 's', 'B', 'B*', 'b', 'b*', 'Tj', 'TJ', "'", '"', 'Do', 'sh', 'BI']);
const SHOWS_TEXT = new Set(['Tj', 'TJ', "'", '"']);

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** Other operators in place of a stretch of a page's content. */
export interface Edit extends Span { readonly instead: string }

/** A page's content with its edits made; these may come in any order but not overlap. */
export function edited({ text }: PageContent, edits: readonly Edit[]): string {
  const out: string[] = [];
  let kept = 0;
  for (const { start, end, instead } of [...edits].sort((a, b) => a.start - b.start)) {
    out.push(text.slice(kept, start), instead);
    kept = end;
  }
  return out.join('') + text.slice(kept);
}

/**
 * Walks a page's content and puts something else where a marked rectangle is painted.
 * `fill` answers with operators, or undefined to leave the rectangle alone.
 */
export function fillMarkedRectangles(content: PageContent, fill: (rectangle: MarkedRectangle) => string | undefined): readonly Edit[] {
  return markedRectangles(content).flatMap((rectangle) => {
    const instead = fill(rectangle);
    return instead === undefined ? [] : [{ start: rectangle.start, end: rectangle.end, instead }];
  });
}

/** Whether a page's content puts any mark on the paper. */
export const paintsSomething = ({ operators }: PageContent): boolean => operators.some(({ name }) => PAINTS.has(name));

/** Whether text shows glyph 0, by convention the box for a letter the font lacks. Our fonts' glyphs are numbered in two bytes. */
export const showsMissingGlyph = (content: PageContent): boolean =>
  content.operators.some(({ name, operands }) => SHOWS_TEXT.has(name) && operands.some((operand) => hasGlyphNone(content, operand)));

const HEX_OPEN = '<';

/** Whether a string in hexadecimal has four noughts at the place of a glyph. It is looked for in the string alone: on the whole page it may be far. */
function hasGlyphNone({ text }: PageContent, { start, end }: Span): boolean {
  if (text[start] !== HEX_OPEN || (end - start - 2) % 4 !== 0) return false;
  const glyphs = text.slice(start + 1, end - 1);
  for (let at = glyphs.indexOf('0000'); at >= 0; at = glyphs.indexOf('0000', at + 1)) {
    if (at % 4 === 0) return true;
  }
  return false;
}

/** The numbers of a page's marked content, each with whether text is shown in it. */
export function markedContent(content: PageContent): ReadonlyMap<number, boolean> {
  const found = new Map<number, boolean>();
  const open: (number | undefined)[] = [];
  for (const operator of content.operators) {
    const { name } = operator;
    if (name === 'BMC') open.push(open.at(-1));
    else if (name === 'BDC') open.push(mcidOf(content, operator) ?? open.at(-1));
    else if (name === 'EMC') open.pop();
    const mcid = open.at(-1);
    if (mcid !== undefined) found.set(mcid, found.get(mcid) === true || SHOWS_TEXT.has(name));
  }
  return found;
}

/** Makes marked content of these numbers artifacts: marks on the page that belong to no text and no picture (ISO 32000-1, 14.8.2.2). */
export function asArtifacts(content: PageContent, mcids: ReadonlySet<number>): readonly Edit[] {
  return content.operators.flatMap((operator) => {
    const mcid = operator.name === 'BDC' ? mcidOf(content, operator) : undefined;
    if (mcid === undefined || !mcids.has(mcid)) return [];
    return [{ start: operator.operands[0]?.start ?? operator.start, end: operator.end, instead: '/Artifact BMC' }];
  });
}

/** A rectangle from (0, 0) that is filled inside marked content. */
export interface MarkedRectangle extends Span {
  /** Number of the marked content on its page. */
  readonly mcid: number;
  /** From the rectangle's own coordinates to the page's points. */
  readonly toPage: Matrix;
  /** In the rectangle's own coordinates. */
  readonly width: number;
  readonly height: number;
}

function markedRectangles(content: PageContent): readonly MarkedRectangle[] {
  const found: MarkedRectangle[] = [];
  const saved: Matrix[] = [];
  const marks: (number | undefined)[] = [];
  let toPage = IDENTITY;
  let rectangle: readonly Span[] = [];
  for (const operator of content.operators) {
    const mcid = marks.at(-1);
    switch (operator.name) {
      case 'q': saved.push(toPage); break;
      case 'Q': toPage = saved.pop() ?? IDENTITY; break;
      case 'cm': toPage = multiply(matrixOf(numbersOf(content, operator.operands)), toPage); break;
      case 'BMC': marks.push(undefined); break;
      case 'BDC': marks.push(mcidOf(content, operator)); break;
      case 'EMC': marks.pop(); break;
      case 're': rectangle = operator.operands; break;
      case 'f': case 'f*':
        if (mcid !== undefined && rectangle.length === 4) found.push({ mcid, toPage, ...extent(content, rectangle, operator) });
        rectangle = [];
        break;
    }
  }
  return found;
}

const numbersOf = (content: PageContent, operands: readonly Span[]): readonly number[] => operands.map((operand) => Number(textIn(content, operand)));

function extent(content: PageContent, rectangle: readonly Span[], paint: Operator): Pick<MarkedRectangle, 'width' | 'height' | 'start' | 'end'> {
  const [, , width, height] = numbersOf(content, rectangle);
  return { width: width ?? 0, height: height ?? 0, start: rectangle[0]?.start ?? paint.start, end: paint.end };
}

function mcidOf(content: PageContent, { operands }: Operator): number | undefined {
  const at = operands.findIndex((operand) => textIn(content, operand) === '/MCID');
  const value = operands[at + 1];
  return at < 0 || value === undefined ? undefined : Number(textIn(content, value));
}

function matrixOf(numbers: readonly number[]): Matrix {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = numbers.slice(-6);
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
