import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checkModel } from '../../src/check/index.ts';
import { buildModel } from '../../src/model/index.ts';
import { remediesOf } from '../../src/page/browser/workers/remedies.ts';
import { itemOf } from '../../src/page/browser/workers/subject.ts';
import { declaredFor, dimensionedText, filesOnDisk, type Quantity } from '../../src/read/index.ts';

const disk = filesOnDisk(fileURLToPath(new URL('../../', import.meta.url)));
const files = Object.fromEntries(['steps/rack/item.yaml', 'steps/kits/stall-kit.yaml'].map((path) => [path, disk.text(path) ?? '']));
const subject = { run: 1, files, path: 'steps/rack/item.yaml', size: 'low', values: {} };

/** What the check says of the low rack with one value changed. */
function verdictWith(parameter: string, value: Quantity): string | undefined {
  const item = itemOf({ ...subject, values: { [parameter]: dimensionedText(value) } });
  return checkModel(buildModel(item, 'low'), declaredFor(item, 'low')).findings.find(({ name }) => name === 'tip-angle')?.verdict;
}

describe('what would mend a check', () => {
  it('is a value that passes, and the nearest whole one that does', () => {
    const remedies = [...remediesOf(subject, 'tip-angle')].flatMap((each) => each ?? []);
    expect(remedies.map(({ parameter }) => parameter)).toEqual(expect.arrayContaining(['depth', 'height']));
    const now = itemOf(subject).sizes.find(({ name }) => name === 'low')?.values ?? {};
    for (const { parameter, value } of remedies) {
      expect([parameter, verdictWith(parameter, value)]).toEqual([parameter, 'pass']);
      const saved = now[parameter]?.value ?? 0;
      const range = itemOf(subject).parameters.find(({ name }) => name === parameter);
      // Halved five times between two of eight looks: so near is the nearest.
      const fine = value.dimension === 'length' ? 1 + ((range?.most.value ?? 0) - (range?.least.value ?? 0)) / 8 / 32 : 1;
      const nearer = value.value + (value.value > saved ? -fine : fine);
      expect([parameter, nearer === saved ? 'caution' : verdictWith(parameter, { ...value, value: nearer })]).toEqual([parameter, 'caution']);
    }
  });

  it('is nothing where no value in its range mends it', () => {
    expect([...remediesOf(subject, 'joint-test')].filter((each) => each !== null)).toEqual([]);
  });
});
