import { browserCampaign } from './browsers.ts';
import { cacheCampaign } from './cache.ts';
import { diskCampaign } from './disks.ts';
import { killCampaign } from './kills.ts';
import { keptKillCampaign } from './kept-kills.ts';
import { mutationCampaign } from './mutations.ts';
import { workCampaign } from './works.ts';

// npm run campaign -- <name> [count] [seed]: tells the figures and what was found; ends with 1 when something was.
const campaigns: Readonly<Record<string, (count: number, seed: number, tell: (line: string) => void) => Promise<{ readonly faults: readonly string[] }>>> = {
  kills: killCampaign,
  'kept-kills': keptKillCampaign,
  browsers: browserCampaign,
  mutations: mutationCampaign,
  works: workCampaign,
  disks: diskCampaign,
  cache: cacheCampaign,
};

const tell = (line: string): void => { process.stdout.write(`${line}\n`); };
const [name = '', count = '100', seed = '1'] = process.argv.slice(2);
const campaign = campaigns[name];
if (campaign === undefined) throw new Error(`${name}: no such campaign; would be right: one of ${Object.keys(campaigns).join(', ')}`);
tell(`${name}, ${count} times, seed ${seed}`);
const figures = await campaign(Number(count), Number(seed), tell);
tell(JSON.stringify(figures, null, 2));
if (figures.faults.length > 0) process.exitCode = 1;
