// What is printed leaves a twentieth in hand; figures at part of a load by proportion (C).
import { describe, expect, it } from 'vitest';
import { checkModel, defaultLimits, tightest, type Limits, type Report } from '../../src/check/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { everySize, itemNamed, modelOf, reportOf as asDeclared } from '../support/items.ts';

const reportOf = (item: string, size: string, limits?: Limits): Report => {
  const read = itemNamed(item);
  return limits === undefined ? asDeclared(read, size) : checkModel(modelOf(read, size), declaredFor(read, size), limits);
};

const unreserved: Limits = { ...defaultLimits, loadReserve: { ...defaultLimits.loadReserve, value: 1 } };
const figure = ({ findings }: Report, name: string): number => findings.find((each) => each.name === name)?.figure ?? NaN;

describe('the reserve', () => {
  it.each(everySize.map(({ item, size }) => [item.name, size] as const))('%s %s holds every check that it passes with a twentieth in hand', (item, size) => {
    const [least] = tightest(reportOf(item, size));
    expect([least?.name, (least?.margin ?? NaN) >= 1.05]).toEqual([least?.name, true]);
  });

  it('lowers the load that is told, not the test that a use must pass', () => {
    const [told, all] = [reportOf('stool', 'standard'), reportOf('stool', 'standard', unreserved)];
    expect(told.findings.find(({ name }) => name === 'use-load')).toEqual(all.findings.find(({ name }) => name === 'use-load'));
    expect([told, all].map(({ advice }) => advice.safeLoadPerDeck)).toEqual([710, 750]);
  });

  it('lowers the loads on an item of points and bars alike, told in the sources', () => {
    const [told, all] = [reportOf('leaning-chair', 'standard'), reportOf('leaning-chair', 'standard', unreserved)];
    const share = figure(told, 'tube-deflection') / figure(all, 'tube-deflection');
    expect(share).toBeGreaterThan(0.9);
    expect(share).toBeLessThan(1);
    expect(told.findings.find(({ name }) => name === 'panel-skin')?.source).toContain(`${(100 * share).toFixed(1)} % of it, for the reserve`);
  });

  it('is not asked of what no smaller load would help: the load of a shelf stays where its wall bracket is scant', () => {
    const scant: Limits = { ...defaultLimits, wallPull: { ...defaultLimits.wallPull, value: 2.6 } };
    const report = reportOf('two-bay', 'tall', scant);
    expect(report.findings.find(({ name }) => name === 'wall-hold')?.margin).toBeLessThan(1.05);
    expect(report.advice.safeLoadPerDeck).toBe(reportOf('two-bay', 'tall').advice.safeLoadPerDeck);
  });
});
