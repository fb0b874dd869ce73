import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newWorkshop, type Workshop } from './workshop.ts';

let shop: Workshop;
beforeAll(() => { shop = newWorkshop(); });
afterAll(() => { shop.close(); });

const COMMANDS = ['make', 'gather', 'check', 'work', 'draw', 'page', 'guide', 'cut', 'stock', 'sheets', 'pack', 'schemas', 'words'];

describe('the help', () => {
  it('names every command and exit code, and ends with 0', async () => {
    const { code, out, told } = await shop.run(['--help']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    for (const name of COMMANDS) expect(out).toMatch(new RegExp(`^  ${name}\\b.*\\S`, 'm'));
    expect(out.match(/^ {2}\d(?= )/gm)?.map(Number)).toEqual([0, 1, 2, 3]);
  });

  it('is told in words of our own, for commands in commands too', async () => {
    for (const args of [['make'], ['draw'], ['words'], ['words', 'export'], ['stock', 'sheet']]) {
      const { code, out } = await shop.ask([...args, '--help']);
      expect(code).toBe(0);
      expect(out.startsWith(`foldwright ${args.join(' ')}`)).toBe(true);
      expect(out).toContain('tells how it is called');
      expect(out).not.toMatch(/Usage:|Options:|Arguments:|Commands:|display help|\(default|\[options\]/);
    }
  });

  it('is told where no command is named, and that is a fault of the call', async () => {
    for (const args of [[], ['words'], ['stock']]) {
      const { code, out, told } = await shop.ask(args);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(told).toContain('commands:');
    }
  });
});

describe('a call that cannot be read', () => {
  it.each([
    [['make', 'rack', 'bed'], 'more is named than the command takes; would be right: what its --help names'],
    [['check', '--size'], '--size <names...>: nothing follows it; would be right: the option followed by a value'],
    [['cut'], '<items>: not given; would be right: the command followed by it'],
    [['words', 'exprot'], 'exprot: no such command; would be right: export'],
  ])('is told in one line: %j', async (args, told) => {
    expect(await shop.ask(args)).toMatchObject({ code: 2, out: '', told: `foldwright: ${told}; see: foldwright --help\n` });
  });
});
