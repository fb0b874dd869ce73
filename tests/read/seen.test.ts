import { describe, expect, it } from 'vitest';
import { faultLine } from '../../src/read/index.ts';
import { faultsOf } from '../support/faults.ts';
import { stockFromText } from '../../src/read/index.ts';
import { itemFile, readSample, sample } from './samples.ts';

describe('what a file holds, quoted in what is wrong with it', () => {
  it('stands as it is, but for signs that terminals obey or that turn the line round: those are seen', () => {
    const told = faultsOf(() => readSample({ [itemFile]: sample(itemFile).replace('width: 800 mm', 'width: "<b>\\e[2J\\u202e\\u0007 8 mm"') })).map(faultLine);
    expect(told).toHaveLength(1);
    expect(told[0]).toContain('found "<b>\\u001b[2J\\u202e\\u0007 8 mm", would be right: ');
  });

  it('so do names of fields', () => {
    const told = faultsOf(() => readSample({ [itemFile]: sample(itemFile).replace('    width: 800 mm', '    width: 800 mm\n    "wi\\u202edth": 1 mm') })).map(faultLine);
    expect(told.join()).toContain('sizes.low.wi\\u202edth: found "wi\\u202edth"');
    expect(told.join()).not.toContain('\u202e');
  });

  it('a piece of a stock whose name is markup is refused by it, and never comes to a page', () => {
    const told = faultsOf(() => stockFromText('kind: stock\nname: pile\nkit: stall-kit\ntubes:\n  - name: "<script>hit()</script>"\n    count: 1\n    length: 2000 mm\n', 'steps/stock/pile.yaml')).map(faultLine);
    expect(told).toEqual(['steps/stock/pile.yaml:5:11 tubes.1.name: found "<script>hit()</script>", would be right: a name in small letters, digits and hyphens, for example stall-kit']);
  });
});
