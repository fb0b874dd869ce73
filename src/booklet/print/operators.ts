/** A stretch of a page's content, from its first character to the one after its last. */
export interface Span { readonly start: number; readonly end: number }

/** An operator and the operands before it. */
export interface Operator extends Span {
  readonly name: string;
  readonly operands: readonly Span[];
}

/** A page's content, one character a byte, and its operators in order. */
export interface PageContent {
  readonly text: string;
  readonly operators: readonly Operator[];
}

export const textIn = ({ text }: PageContent, { start, end }: Span): string => text.slice(start, end);

/** Reads a page's content once, by ISO 32000-1, 7.2 and 7.8.2. */
export function readOperators(text: string): PageContent {
  const operators: Operator[] = [];
  let operands: Span[] = [];
  for (let at = 0; at < text.length;) {
    const code = text.charCodeAt(at);
    if (isWhite(code)) { at += 1; continue; }
    const end = tokenEnd(text, at, code);
    if (code !== PERCENT) {
      if (isOperand(text, at, end, code)) operands.push({ start: at, end });
      else {
        operators.push({ name: text.slice(at, end), start: at, end, operands });
        operands = [];
      }
    }
    at = end;
  }
  return { text, operators };
}

const [PERCENT, OPEN, CLOSE, LESS, GREATER, SLASH, BRACKET, BRACKET_END, BACKSLASH] = [...'%()<>/[]\\'].map((letter) => letter.charCodeAt(0)) as
  [number, number, number, number, number, number, number, number, number];

/** NUL, tab, line feed, form feed, carriage return, space. */
const isWhite = (code: number): boolean => code === 32 || code === 10 || code === 13 || code === 9 || code === 12 || code === 0;

/** Where a word ends: at white space or one of ( ) < > [ ] { } / %. */
const isBreak = (code: number): boolean =>
  isWhite(code) || code === OPEN || code === CLOSE || code === LESS || code === GREATER || code === SLASH || code === PERCENT
  || code === BRACKET || code === BRACKET_END || code === 123 || code === 125;

function tokenEnd(text: string, start: number, code: number): number {
  switch (code) {
    case OPEN: return stringEnd(text, start);
    case PERCENT: return lineEnd(text, start);
    case LESS: return text.charCodeAt(start + 1) === LESS ? start + 2 : hexEnd(text, start);
    case GREATER: return text.charCodeAt(start + 1) === GREATER ? start + 2 : start + 1;
    case BRACKET: case BRACKET_END: case CLOSE: return start + 1;
    default: return wordEnd(text, start + 1);
  }
}

/** After the bracket that closes a string; brackets inside are balanced or come after a backslash. */
function stringEnd(text: string, start: number): number {
  let depth = 0;
  for (let at = start; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === BACKSLASH) at += 1;
    else if (code === OPEN) depth += 1;
    else if (code === CLOSE && (depth -= 1) === 0) return at + 1;
  }
  return text.length;
}

function hexEnd(text: string, start: number): number {
  const end = text.indexOf('>', start);
  return end < 0 ? text.length : end + 1;
}

function lineEnd(text: string, start: number): number {
  let at = start;
  while (at < text.length && text.charCodeAt(at) !== 10 && text.charCodeAt(at) !== 13) at += 1;
  return at;
}

function wordEnd(text: string, start: number): number {
  let at = start;
  while (at < text.length && !isBreak(text.charCodeAt(at))) at += 1;
  return at;
}

/** Numbers, strings, names, brackets and the words true, false and null. */
function isOperand(text: string, start: number, end: number, code: number): boolean {
  if ((code >= 48 && code <= 57) || code === 45 || code === 43 || code === 46) return true;
  if (code === OPEN || code === LESS || code === GREATER || code === SLASH || code === BRACKET || code === BRACKET_END) return true;
  const length = end - start;
  return (length === 4 && (text.startsWith('true', start) || text.startsWith('null', start))) || (length === 5 && text.startsWith('false', start));
}
