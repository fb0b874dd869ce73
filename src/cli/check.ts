import { checkModel, findingText, scant, tightest, type Advice, type Finding, type Report } from '../check/index.ts';
import { wouldHold } from './would-hold.ts';
import { buildModel } from '../model/index.ts';
import { declaredFor } from '../read/index.ts';
import { FailedCheck } from './failed-check.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { localesHere, untoldNames, untoldParameters } from './untold.ts';

const LETTERS = 'after a source: (R) read in it, (R2) read in a copy at second hand, (C) computed, (M) from memory';

/** Prints every finding of every size, and which words of its parameters the languages lack; exit code 1 when a finding fails. */
export function checkCommand(name: string | undefined, options: { readonly size?: readonly string[] }): void {
  let failed = 0;
  const margins: Margin[] = [];
  const locales = localesHere();
  for (const item of itemsNamed(name)) {
    for (const size of chosen(sizesOf(item), options.size, 'size')) {
      const report = checkModel(buildModel(item, size), declaredFor(item, size));
      const { findings, notApplied, advice } = report;
      margins.push({ of: `${item.name} ${size}`, report });
      process.stdout.write(`${item.name} ${size}\n`);
      for (const finding of findings) process.stdout.write(`  ${findingText(finding)}\n`);
      for (const { name, because } of notApplied) process.stdout.write(`  none    ${name}: ${because}\n`);
      for (const line of loadLines(advice)) process.stdout.write(`  ${line}\n`);
      if (advice.safeLoadPerDeck === null) for (const line of wouldHold(item, size, report)) process.stdout.write(`  ${line}\n`);
      failed += findings.filter((finding) => finding.verdict === 'fail').length;
    }
    if (locales !== null) for (const line of [...untoldNames(item, locales), ...untoldParameters(item, locales)]) process.stdout.write(`  ${line}\n`);
  }
  process.stdout.write(`${[...marginTable(margins), LETTERS].join('\n')}\n`);
  if (failed > 0) throw new FailedCheck(`${failed} finding${failed === 1 ? '' : 's'} failed`);
}

/** What each place bears, from the highest down, in one line where all bear alike; and all of them at once. */
function loadLines({ safeLoadPerDeck, loads, untestedJoint, wall }: Advice): readonly string[] {
  const more = `${untestedJoint ? ', untested joint: reduced' : ''}${wall === null ? '' : `; fix to a wall (${wall})`}`;
  if (safeLoadPerDeck === null) return [`safe load on each deck: none supported${more}`];
  const alike = loads.every(({ load }) => load === safeLoadPerDeck);
  const together = loads.length < 2 ? '' : `; on all ${loads.length} at once ${loads.reduce((sum, { load }) => sum + load, 0)} N`;
  if (alike) return [`safe load on each deck: ${safeLoadPerDeck} N${together}${more}`];
  return [`safe load by place${together}${more}`, ...loads.map(({ place, panel, load }) => `  ${place} (${panel}): ${load} N`)];
}

/** A size and what was found of it. */
interface Margin {
  readonly of: string;
  readonly report: Report;
}

/** The tightest margin of each size, and every other with less than a twentieth to spare. */
function marginTable(sizes: readonly Margin[]): readonly string[] {
  const told = ({ name, margin, verdict }: Finding): string => `${verdict === 'fail' ? 'fails ' : ''}${name} ${(Math.floor(margin * 1000) / 1000).toFixed(3)}`;
  const wide = Math.max(0, ...sizes.map(({ of }) => of.length));
  return ['tightest margins, what fails first (1 is the limit; more are told where they are under 1.05)', ...sizes.map(({ of, report }) => {
    const all = tightest(report);
    return `  ${of.padEnd(wide)}  ${[...all.slice(0, 1), ...scant(report).slice(1)].map(told).join(', ') || 'none measured'}`;
  })];
}
