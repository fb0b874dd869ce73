import { expect, it } from 'vitest';
import { liftsOff } from '../../src/model/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';

it('is the handle of what stands on castors, and no other bar', () => {
  const found = everySize.flatMap(({ name, item, size }) => liftsOff(modelOf(item, size)).map((id) => `${name}: ${id}`));
  expect(found).toEqual(['trolley small: handle', 'trolley standard: handle', 'trolley large: handle']);
});

it('is told where the item is turned with it: pushed by it, never lifted', () => {
  const withHandle = everySize.filter(({ item }) => item.name === 'trolley' || item.name === 'stool');
  const told = withHandle.flatMap(({ name, item, size }) => planOf(item, size).steps.flatMap(({ action, check }) => (check?.name === 'handle-pushed' ? [`${name} ${action}`] : [])));
  expect(told).toEqual(['trolley small turn-item', 'trolley standard turn-item', 'trolley large turn-item']);
});
