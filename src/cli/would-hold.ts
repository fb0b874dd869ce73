import { remediesFor, type Remedy, type Report } from '../check/index.ts';
import { dimensionedText, filesOnDisk, readItem, withSizeValues, type Item, type ReadFiles } from '../read/index.ts';

/** Whoever waits at a terminal gets a rough search: so many values on each side of the present one, and so many reports in all. */
const LOOKS = 2;
const MOST_REPORTS = 48;

/**
 * What would hold where no load is supported because something fails: each measure that alone would do, which way and how
 * far, the smallest change first. Nothing where nothing fails: a partition bears nothing, and a board wall holds nothing.
 */
export function wouldHold(item: Item, size: string, { findings }: Report, files: ReadFiles = filesOnDisk('.')): readonly string[] {
  const failed = [...new Set(findings.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name))];
  const text = files.text(item.source.file);
  if (failed.length === 0 || text === null) return [];
  let left = MOST_REPORTS;
  const itemWith = (values: Readonly<Record<string, string>>): Item => {
    left -= 1;
    if (left < 0) throw new RangeError(`more than ${MOST_REPORTS} values to try`);
    return readItem({ ...files, text: (path) => (path === item.source.file ? withSizeValues(text, size, values) : files.text(path)) }, item.source.file);
  };
  const found = [...remediesFor({ item, size, itemWith }, (report) => report.findings.every(({ verdict }) => verdict !== 'fail'), LOOKS)].flatMap((each) => each ?? []);
  const told = found.toSorted((a, b) => changeOf(item, size, a) - changeOf(item, size, b)).map((remedy) => textOf(item, size, remedy));
  const untried = left < 0 ? '; not every measure was tried, the workbench page tries all' : '';
  return [`${told.length > 0 ? `would hold: ${told.join('; or ')}` : `would hold: no other value of one measure alone; fails: ${failed.join(', ')}`}${untried}`];
}

const nowOf = (item: Item, size: string, { parameter, value }: Remedy): number => item.sizes.find(({ name }) => name === size)?.values[parameter]?.value ?? value.value;

/** As a share of the measure's range. */
function changeOf(item: Item, size: string, remedy: Remedy): number {
  const [range] = item.parameters.filter(({ name }) => name === remedy.parameter);
  return Math.abs(remedy.value.value - nowOf(item, size, remedy)) / Math.max(1e-9, (range?.most.value ?? 1) - (range?.least.value ?? 0));
}

function textOf(item: Item, size: string, remedy: Remedy): string {
  const now = nowOf(item, size, remedy);
  return `${remedy.parameter} ${remedy.value.value > now ? 'at least' : 'at most'} ${dimensionedText(remedy.value)} instead of ${dimensionedText({ ...remedy.value, value: now })}`;
}
