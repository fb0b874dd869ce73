import { comesOn, MOST_SHEETS, PUBLICATIONS, SHEET_THICKNESS, type Binding } from '../booklet/index.ts';
import { readMeasure } from '../read/index.ts';

export interface BindingOptions {
  readonly bind?: string;
  readonly creep?: string;
  readonly sheets?: string;
}

/** Thicker is no paper that is folded by hand, mm. */
const THICKEST = 0.5;

/** What the options ask for. Throws where one is not known, or is given without `--bind`. */
export function bindingOf({ bind, creep, sheets }: BindingOptions): Binding {
  if (bind === undefined) {
    const alone = creep === undefined ? (sheets === undefined ? null : 'sheets') : 'creep';
    if (alone !== null) throw new Error(`--${alone}: found without a binding; would be right: with --bind stitched`);
    return null;
  }
  if (bind !== 'stitched') throw new Error(`--bind ${bind}: not known; would be right: stitched`);
  return { mostSheets: sheets === undefined ? MOST_SHEETS : mostSheets(sheets), thickness: creep === undefined ? SHEET_THICKNESS : thickness(creep) };
}

/** Throws where a paper is asked for of which two pages go on no sheet. */
export function papersToStitch(papers: readonly string[]): void {
  const whole = papers.find((paper) => !comesOn(PUBLICATIONS.stitched, paper));
  if (whole !== undefined) throw new Error(`--bind stitched --paper ${whole}: two such pages go on no sheet that is printed here; would be right: ${PUBLICATIONS.stitched.papers.join(' or ')}`);
}

function thickness(text: string): number {
  const reading = readMeasure(text, 'length');
  if ('remedy' in reading) throw new Error(`--creep: found "${text}", would be right: ${reading.remedy}`);
  if (reading.value < 0 || reading.value > THICKEST) throw new Error(`--creep: found "${text}", would be right: the thickness of a sheet of paper, 0 mm to ${THICKEST} mm`);
  return reading.value;
}

function mostSheets(text: string): number {
  const found = /^[1-9]\d{0,2}$/.test(text) ? Number(text) : null;
  if (found === null) throw new Error(`--sheets: found "${text}", would be right: how many sheets the stapler goes through, a whole number from 1 to 999`);
  return found;
}
