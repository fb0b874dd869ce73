import { tubeKinds, type FittingKind } from '../read/index.ts';
import type { Model, Vec3 } from './types.ts';

/** Ends of tubes that are in no socket, under no cap and on no foot: how many for each outside and inside, mm, the widest first. */
export function openEnds(model: Pick<Model, 'parts' | 'connections'>): readonly { readonly outside: number; readonly inside: number; readonly count: number }[] {
  const open = openTubes(model);
  const sizes = [...new Set(open.map(({ outside, inside }) => `${outside} ${inside}`))];
  return sizes.flatMap((size) => {
    const alike = open.filter(({ outside, inside }) => `${outside} ${inside}` === size);
    const count = alike.reduce((sum, each) => sum + each.count, 0);
    return alike.slice(0, 1).flatMap(({ outside, inside }) => (count === 0 ? [] : [{ outside, inside, count }]));
  }).toSorted((a, b) => b.outside - a.outside);
}

/** Those of them that the work caps: all, unless the kit says that it has no caps for them. */
export const cappedEnds = (model: Pick<Model, 'parts' | 'connections' | 'kit'>): ReturnType<typeof openEnds> => (hasCaps(model) ? openEnds(model) : []);

/** Whether open ends of tubes get caps: what a kit says nothing of is brought as any other supply. */
export const hasCaps = ({ kit: { caps } }: Pick<Model, 'kit'>): boolean => caps?.tubeEnds !== false;

/** The ends that the work caps, by tube, in the order in which the model has them. */
export function cappedTubes(model: Pick<Model, 'parts' | 'connections' | 'kit'>): ReadonlyMap<string, readonly OpenEnd['end'][]> {
  const open = hasCaps(model) ? openPlaces(model) : [];
  return new Map([...new Set(open.map(({ tube }) => tube))].map((tube) => [tube, open.filter((each) => each.tube === tube).map(({ end }) => end)]));
}

/** Every tube with how many of its ends stay open. */
function openTubes(model: Pick<Model, 'parts' | 'connections'>): readonly { readonly outside: number; readonly inside: number; readonly count: number }[] {
  const open = openPlaces(model);
  return model.parts.flatMap(({ id, shape }) => (shape.form === 'tube'
    ? [{ outside: shape.outside, inside: shape.inside, count: open.filter(({ tube }) => tube === id).length }] : []));
}

/** An end of a tube that stays open: the one at −x or +x of the tube's own axis. */
export interface OpenEnd {
  readonly tube: string;
  readonly end: -1 | 1;
}

/** Every end of a tube that is in no socket, under no cap and on no foot. */
export function openPlaces({ parts, connections }: Pick<Model, 'parts' | 'connections'>): readonly OpenEnd[] {
  const closed = new Set<string>();
  const along = new Map(parts.map(({ id, pose: [x = 0, y = 0, z = 0] }) => [id, [x, y, z] as const]));
  const close = (tube: string, out: Vec3, towards: -1 | 1): void => {
    const [x, y, z] = along.get(tube) ?? [0, 0, 0];
    closed.add(`${tube} ${Math.sign(x * out[0] + y * out[1] + z * out[2]) * towards}`);
  };
  for (const each of connections) {
    if (each.is === 'socket') close(each.bar, each.out, -1);
    if (each.is === 'cap' || each.is === 'foot') close(each.bar, each.out, 1);
  }
  return parts.flatMap(({ id, shape }) => (shape.form === 'tube' ? ENDS.filter((end) => !closed.has(`${id} ${end}`)).map((end): OpenEnd => ({ tube: id, end })) : []));
}

const ENDS = [-1, 1] as const;

type EndCap = Extract<FittingKind, { readonly is: 'end-cap' }>;

/** Bores nearer to each other than this take the same plug, mm. */
const SAME_BORE = 0.5;

/** Whether a plug goes into a tube of that inside, mm: one that tells no bore is made for the kit's usual tube. */
export const plugFits = (kit: Model['kit'], { bore }: { readonly bore?: number | undefined }, inside: number): boolean => {
  const [usual] = tubeKinds(kit);
  return Math.abs((bore ?? (usual === undefined ? inside : usual.outside - 2 * usual.wall)) - inside) < SAME_BORE;
};

/** The cap for the end of a tube, mm: of the kit's whose plug goes into its bore the one most as wide as the tube, or a plain one of common measures where none does. */
export function capFor(kit: Model['kit'], { outside, inside }: { readonly outside: number; readonly inside: number }): EndCap {
  const own = kit.catalogue.fittings.filter((fitting): fitting is EndCap => fitting.is === 'end-cap' && plugFits(kit, fitting, inside));
  const [nearest] = own.toSorted((a, b) => Math.abs(a.diameter - outside) - Math.abs(b.diameter - outside));
  return nearest ?? { is: 'end-cap', name: 'end-cap', diameter: outside, thickness: 3, plug: 20, mass: 0.01 };
}
