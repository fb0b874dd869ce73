import type { ReferencePicture } from '../booklet/index.ts';
import { planTubes } from '../cut/index.ts';
import * as drawing from '../draw/index.ts';
import { loadSolids, type PartKind, type Solids } from '../model/index.ts';
import { planItem, type Action } from '../plan/index.ts';
import { filesOnDisk, listItems, readItem, type Item } from '../read/index.ts';
import { checkedSize } from './sound.ts';

/** Everything a translator may want to see: the signs, and an example of every action and part that the project's items have. */
export async function referencePictures(root = '.'): Promise<readonly ReferencePicture[]> {
  const files = filesOnDisk(root);
  const items = listItems(files).map((path) => readItem(files, path));
  return [...signs(), ...await examples(items)];
}

function signs(): readonly ReferencePicture[] {
  return [
    ...drawing.actionNames.map((action) => picture(`action-${action}`, `the sign for the action ${action}`, drawing.actionPictogram(action))),
    ...drawing.cautionNames.map((caution) => picture(`sign-${caution}`, `the safety sign ${caution}`, drawing.signFor(caution))),
    ...drawing.toolNames.map((tool) => picture(`tool-${tool}`, `the sign for the tool ${tool}`, drawing.pictogram(tool))),
    ...drawing.pairNames.map((name) => picture(`check-${name}`, 'how it should look, ticked, and how not, crossed', pair(name))),
  ];
}

interface Fragment {
  /** The inside of an `<svg>`, 48 units high. */
  readonly svg: string;
  readonly width: number;
}

/** mm of a pictogram's height, large enough to see on a screen. */
const HEIGHT = 40;

function picture(id: string, shows: string, { svg, width }: Fragment): ReferencePicture {
  const size = `width="${Math.round((width / 48) * HEIGHT)}mm" height="${HEIGHT}mm" viewBox="0 0 ${width} 48"`;
  return { id, shows, svg: `<svg xmlns="http://www.w3.org/2000/svg" ${size}><rect width="${width}" height="48" fill="#fff"/>${svg}</svg>\n` };
}

/** The right and the wrong picture side by side, each with its mark. */
function pair(name: (typeof drawing.pairNames)[number]): Fragment {
  const { right, wrong } = drawing.pairFor(name);
  const marked = (x: number, { svg }: Fragment, mark: Fragment): string =>
    `<g transform="translate(${x} 0)">${svg}<g transform="translate(74 26) scale(0.42)">${mark.svg}</g></g>`;
  return { width: 208, svg: marked(0, right, drawing.pictogram('right')) + marked(110, wrong, drawing.pictogram('wrong')) };
}

/** Goes through the items until every action and kind of part has its picture. */
async function examples(items: readonly Item[]): Promise<readonly ReferencePicture[]> {
  const actions = new Map<Action, ReferencePicture>();
  const parts = new Map<PartKind, ReferencePicture>();
  const lettered: ReferencePicture[] = [];
  for (const item of items) {
    if (actions.size === drawing.actionNames.length) break;
    const found = await examplesOf(item, await loadSolids(), { actions: new Set(actions.keys()), parts: new Set(parts.keys()) });
    for (const [action, { svg }] of found.actions) actions.set(action, { id: `step-${action}`, svg, shows: `a step of the ${item.name} with the action ${action}` });
    for (const [kind, { svg }] of found.parts) parts.set(kind, { id: `part-${kind}`, svg, shows: `the part ${kind}` });
    if (lettered.length === 0) lettered.push({ id: 'lettered', svg: found.lettered.svg, shows: `the ${item.name} with lettered lengths` });
  }
  return [...actions.values(), ...parts.values(), ...lettered];
}

/** Of an item's second size, or its only one. */
async function examplesOf(item: Item, solids: Solids, known: { readonly actions: ReadonlySet<Action>; readonly parts: ReadonlySet<PartKind> }): Promise<drawing.Examples> {
  const { model, report } = checkedSize(item, item.sizes[1]?.name ?? item.sizes[0]?.name ?? '');
  return drawing.examplePictures(model, planItem(model, item.order, solids, report.advice.wall), await planTubes(model), solids, known);
}
