import { describe, expect, it } from 'vitest';
import { changed, draftOf, type Change, type Changes } from '../../src/page/browser/change/use-changes.ts';
import { rack } from '../support/rack.ts';

const mm = (value: number) => ({ value, dimension: 'length' as const });
const place = { path: 'steps/rack/item.yaml', size: 'standard' };
const change = (name: string, before: number, after: number, stroke: number): Change => ({ ...place, before: { [name]: mm(before) }, after: { [name]: mm(after) }, stroke });
const after = (...all: readonly Change[]): Changes => all.reduce((changes: Changes, each) => changed(changes, { order: 'change', change: each }), { wanted: {}, past: [], undone: [] });
const widthIn = (changes: Changes): number | undefined => draftOf(changes, rack, place)['width']?.value;

describe('changes of values', () => {
  it('are undone and redone one after the other, those of one stroke together', () => {
    const all = after(change('width', 1000, 990, 1), change('width', 990, 900, 1), change('width', 900, 850, 2));
    expect(all.past).toHaveLength(2);
    const once = changed(all, { order: 'undo' });
    const twice = changed(once, { order: 'undo' });
    expect([widthIn(all), widthIn(once), widthIn(twice)]).toEqual([850, 900, undefined]);
    expect(widthIn(changed(changed(twice, { order: 'redo' }), { order: 'redo' }))).toBe(850);
    expect(changed(twice, { order: 'undo' })).toBe(twice);
  });

  it('can be undone when they are in the file', () => {
    const all = after(change('width', 1000, 900, 1));
    const saved = { ...rack, sizes: rack.sizes.map((size) => (size.name === 'standard' ? { ...size, values: { ...size.values, width: mm(900) } } : size)) };
    expect(draftOf(all, saved, place)).toEqual({});
    expect(draftOf(changed(all, { order: 'undo' }), saved, place)).toEqual({ width: mm(1000) });
  });

  it('leave out parameters that the file no longer has', () => {
    const all = after(change('width', 1000, 900, 1));
    expect(draftOf(all, { ...rack, parameters: rack.parameters.filter(({ name }) => name !== 'width') }, place)).toEqual({});
  });
});
