import { z } from 'zod';
import { limits, ranges } from './limits.ts';
import { messages } from './messages.ts';
import { figurePattern, readMeasure } from './quantities.ts';
import { firstUnseen, withoutUnseen } from './seen.ts';
import { inBaseUnit, unitsFor } from './units.ts';
import type { Measured } from './units.ts';

/** What a value must keep to besides its unit; `upTo` is a text such as `90 deg`. */
interface Bounds {
  readonly zero?: boolean;
  readonly upTo?: readonly [figure: string, unit: string];
}

/** A number with a unit of `measured`, turned into its base unit; above zero unless `zero` allows nought. */
export function measure(measured: Measured, purpose: string, bounds: Bounds = {}) {
  return z.string({ error: messages.withUnit(measured) })
    .max(limits.figureLength, { error: messages.withUnit(measured) })
    .meta({ description: purpose, pattern: `^${figurePattern}\\s*(${unitsFor(measured).map(escaped).join('|')})$` })
    .transform((text, context) => {
      const reading = readMeasure(text, measured);
      const remedy = 'remedy' in reading ? reading.remedy : boundsRemedy(reading.value, measured, bounds);
      if (remedy === null && 'value' in reading) return reading.value;
      context.addIssue({ code: 'custom', message: remedy ?? messages.withUnit(measured) });
      return z.NEVER;
    });
}

function boundsRemedy(value: number, measured: Measured, { zero = false, upTo }: Bounds): string | null {
  if (value < 0 && zero) return messages.zeroOrMore(measured);
  if (upTo !== undefined && (value <= 0 || value > inBaseUnit(upTo[0], upTo[1], measured))) return messages.upTo(measured, upTo.join(' '));
  return value > 0 || (zero && value === 0) ? null : messages.aboveZero(measured);
}

/** A plain number from 0 to 1. */
export function share(purpose: string) {
  return z.number({ error: messages.share }).min(0, { error: messages.share }).max(1, { error: messages.share }).meta({ description: purpose });
}

/** A plain number above 0 and up to 1. */
export function shareAboveZero(purpose: string) {
  const error = messages.shareAboveZero;
  return z.number({ error }).gt(0, { error }).max(1, { error }).meta({ description: purpose });
}

/** A whole number from 1 up to `most`; the remedy says so. */
export function wholeFromOne(purpose: string, most = 1_000_000, error: string = messages.wholeFromOne) {
  return z.int({ error }).min(1, { error }).max(most, { error }).meta({ description: purpose });
}

/** A text of at most `most` characters. */
export function shortText(most: number, remedy: string, purpose: string) {
  return z.string({ error: remedy }).max(most, { error: messages.textLong(most) }).meta({ description: purpose });
}

/** A text of at most `most` characters that must match a pattern; the remedy says what it looks like. */
export function patternText(pattern: RegExp, most: number, remedy: string, purpose: string) {
  return z.string({ error: remedy }).max(most, { error: messages.textLong(most), abort: true }).regex(pattern, { error: remedy }).meta({ description: purpose });
}

/** A plain number, or a text that a reader of its own goes on with. */
function plainOrText(most: number, tooLong: string, remedy: string, purpose: string) {
  const [, largest] = ranges.ratio;
  const error = messages.inRange('ratio');
  return z.union([z.string({ error: remedy }).max(most, { error: tooLong }), z.number({ error: remedy }).min(-largest, { error }).max(largest, { error })], { error: remedy })
    .meta({ description: purpose });
}

/** An expression as it is written; `readExpression` reads it. */
export const expression = (purpose: string) => plainOrText(limits.expressionLength, messages.expressionLong(limits.expressionLength), messages.expression, purpose);

/** A number with its unit, or a plain one, as it is written; `readQuantity` reads it. */
export const quantity = (purpose: string) => plainOrText(limits.figureLength, messages.quantity, messages.quantity, purpose);

/** A section in which each line has a name of its own: from `least` to `most` of them. */
export function namedSection<Entry extends z.ZodType>(
  name: z.ZodType<string, string>, entry: Entry, purpose: string,
  { most = limits.entries, least = 0, remedy = messages.entries(most), error = messages.namedSection }: { readonly most?: number; readonly least?: number; readonly remedy?: string; readonly error?: string } = {},
) {
  return z.record(name, entry, { error })
    .refine((entries) => Object.keys(entries).length >= least && Object.keys(entries).length <= most, { error: remedy })
    .meta({ description: purpose, maxProperties: most });
}

/** A sentence for people. */
export function sentence(remedy: string, purpose: string) {
  return z.string({ error: remedy }).max(limits.sentenceLength, { error: messages.textLong(limits.sentenceLength), abort: true }).regex(/\S/, { error: remedy })
    .refine((text) => firstUnseen(text) === null, { error: withoutUnseen }).meta({ description: purpose });
}

const fileNamePattern = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/** The name of a file, a folder, a size or a piece. */
export function fileName(purpose: string) {
  return patternText(fileNamePattern, limits.nameLength, messages.fileName, purpose);
}

/** The name of a piece that stands elsewhere in the file. Any text is read: the reader of names tells the nearest piece. */
export function pieceReference(purpose: string) {
  return shortText(limits.nameLength, messages.fileName, purpose).meta({ pattern: fileNamePattern.source });
}

/** A name that can stand in an expression. */
export const expressionName = patternText(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/, limits.nameLength, messages.expressionName, 'A name that expressions may use.');

export function oneWord<const Word extends string>(word: Word, remedy: string, purpose: string) {
  return z.literal(word, { error: remedy }).meta({ description: purpose });
}

/** A section in which every field is known. For unknown fields the message is the list of known ones (see validate.ts). */
export function section<const Shape extends z.core.$ZodLooseShape>(shape: Shape, purpose: string) {
  const names = Object.keys(shape);
  return z.strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? names.join(' ') : messages.section(names)) })
    .meta({ description: purpose });
}

/** The unit as a pattern; a raised figure may be written either way. */
function escaped(unit: string): string {
  return unit.replace('^2', '(\\^2|²)').replace('^3', '(\\^3|³)');
}
