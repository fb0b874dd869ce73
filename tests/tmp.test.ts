import { it } from 'vitest';
import { buildModel, joinedBy } from '../src/model/index.ts';
import { structureItem, structureNames } from './support/structures.ts';
import { solids } from './support/rack.ts';
it.each(structureNames)('%s', (name) => { try {
  const item = structureItem(name);
  for (const size of item.sizes.slice(0,1)) {
    const t0 = performance.now();
    const model = buildModel(item, size.name);
    const t1 = performance.now();
    console.log(name, size.name, model.parts.length, 'parts', Math.round(t1 - t0), 'ms; joints', JSON.stringify(Object.fromEntries(model.parts.filter((p) => p.kind === 'joint').map((p) => [p.id, p.shape.form === 'joint' ? 'corner' : p.shape.form === 'ported-joint' ? p.shape.joint.name : '?']))));
    console.log(JSON.stringify(model.tubes), model.deckTops, model.patterns.map((p) => [p.form, p.partIds, p.flaps.map((f) => f.name)].join(' ')));
    const reached = new Set([model.parts[0]!.id]);
    for (let before = 0; before < reached.size;) { before = reached.size; for (const j of model.connections.map(joinedBy)) if (j.some((id) => reached.has(id))) j.forEach((id) => reached.add(id)); }
    console.log('unreached', model.parts.filter((p) => !reached.has(p.id)).map((p) => p.id), 'low', Math.min(...model.parts.map((p) => solids.box(p).least[2])));
    const out: string[] = [];
    model.parts.forEach((a, i) => model.parts.slice(i + 1).forEach((b) => { const v = solids.overlap(a, b); if (v > 1) out.push(`${a.id} & ${b.id}: ${v.toFixed(0)}`); }));
    console.log('shared', out.slice(0, 25), out.length, Math.round(performance.now() - t1));
  }
} catch (e) { console.log(name, (e as Error).stack); } });
