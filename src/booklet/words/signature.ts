import { firstUnseen } from '../../read/index.ts';

/** Whether a text is a day of the calendar, written by ISO 8601 as `2026-03-14`. */
export function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** Whether a text may stand as a name on a page: not blank, one line, without controls and marks that turn the text round. */
export const isName = (text: string): boolean => text.trim() === text && text !== '' && text.length <= 100 && !/[\n\r\t]/.test(text) && firstUnseen(text) === null;
