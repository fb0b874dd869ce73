// The promises of all old sizes in one small table: what each gives, so that a change of a check or a size shows.
import { expect, it } from 'vitest';
import { tightest, type Finding, type Report } from '../../src/check/index.ts';
import { reportOf } from '../support/items.ts';
import { itemNamed, variants } from './items.ts';

const namesOf = ({ findings }: Report, verdict: Finding['verdict']): string => [...new Set(findings.filter((finding) => finding.verdict === verdict).map(({ name }) => name))].join(' ') || '–';

/** The least margin; where several are as tight, the first of them. */
function leastOf(report: Report): string {
  const [least] = tightest(report);
  return least === undefined ? '–' : `${least.name} ${least.margin.toFixed(3)}`;
}

it('promises of each size what it promised, by the margin it had', async () => {
  const rows = variants.map(([name, size]) => {
    const report = reportOf(itemNamed(name), size);
    const { safeLoadPerDeck: load, governedBy, wall, untestedJoint } = report.advice;
    return `| ${name} ${size} | ${load === null ? 'none' : `${load} N`}${untestedJoint ? ', untested joint' : ''}${wall !== null ? ', to a wall' : ''} | ${governedBy ?? '–'} | ${leastOf(report)} | ${namesOf(report, 'fail')} | ${namesOf(report, 'caution')} |`;
  });
  const table = ['| size | load on each deck | governed by | tightest margin | fails | cautions |', '|---|---|---|---|---|---|', ...rows, ''].join('\n');
  await expect(table).toMatchFileSnapshot('./table.md');
});

it('fails nothing that is shipped', () => {
  for (const [name, size] of variants) {
    const report = reportOf(itemNamed(name), size);
    expect([name, size, namesOf(report, 'fail'), report.advice.safeLoadPerDeck]).toEqual([name, size, '–', expect.any(Number)]);
  }
});
