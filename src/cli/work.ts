import { loadSolids, type Model } from '../model/index.ts';
import { planItem, type Plan } from '../plan/index.ts';
import { filesOnDisk, readItem, type Item } from '../read/index.ts';
import { itemFiles } from './project-names.ts';
import { chosen, sizesOf } from './project.ts';
import { checkedSize } from './sound.ts';

/**
 * Tells the parts of an item, the tubes to cut and the order of work that taking it apart finds, each motion proven
 * free. Throws when there is no such item or no such order.
 */
export async function workCommand(name: string, options: { readonly size?: readonly string[] }): Promise<void> {
  const item = itemOf(name);
  for (const size of chosen(sizesOf(item), options.size, 'size')) {
    const sound = checkedSize(item, size);
    const plan = planItem(sound.model, item.order, await loadSolids(), sound.report.advice.wall);
    process.stdout.write(`${[...heading(sound.model, plan), ...steps(plan)].join('\n')}\n`);
  }
}

function itemOf(name: string): Item {
  const [file = ''] = itemFiles(name, '.');
  return readItem(filesOnDisk('.'), file);
}

const heading = ({ item, size, parts, tubes }: Model, { steps: found, batches }: Plan): readonly string[] => [
  `${item} ${size}: ${parts.length} parts, ${found.length} steps`,
  ...tubes.map(({ length, count }) => `  tubes   ${count} of ${Math.round(length * 10) / 10} mm`),
  ...batches.map(({ name, times }) => `  alike   ${times} of ${name}`),
];

const steps = ({ steps: found }: Plan): readonly string[] => found.map(({ number, key, times, people, newParts, props }) =>
  [`  ${String(number).padStart(3)}`, key, `×${times}`, `${people} ${people === 1 ? 'person' : 'people'}`, `${newParts.reduce((sum, { ids }) => sum + ids.length, 0)} new parts`,
    ...(props.length > 0 ? [`${props.length} propped`] : [])].join('  '));
