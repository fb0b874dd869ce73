import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { buildModel } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { filesInMemory, readItem } from '../../src/read/index.ts';
import { sharedSolids } from '../support/kernel.ts';

const blocks = [...readFileSync('steps/README.md', 'utf8').matchAll(/```yaml\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');

it('the item that the README writes from nothing builds and has an order', async () => {
  const text = blocks.find((block) => block.includes('kind: item'));
  const name = /^name: (\S+)$/m.exec(text ?? '')?.[1] ?? '';
  const item = readItem(filesInMemory({
    [`steps/${name}/item.yaml`]: text ?? '',
    'steps/kits/stall-kit.yaml': readFileSync('steps/kits/stall-kit.yaml', 'utf8'),
  }), `steps/${name}/item.yaml`);
  const solids = await sharedSolids();
  for (const { name: size } of item.sizes) {
    expect(planItem(buildModel(item, size), item.order, solids).steps.length).toBeGreaterThan(30);
  }
});
