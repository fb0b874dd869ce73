import { browserCampaign } from './browsers.ts';
import { cacheCampaign } from './cache.ts';
import { diskCampaign } from './disks.ts';
import { guidedCampaign } from './guided.ts';
import { killCampaign } from './kills.ts';
import { keptKillCampaign } from './kept-kills.ts';
import { mutationCampaign } from './mutations.ts';
import { nightlyCampaign } from './nightly.ts';
import { workCampaign } from './works.ts';

// npm run campaign -- <name> [count] [seed]: tells the figures and what was found; ends with 1 when something was.
// npm run campaign -- nightly [report] [seed]: all of them by the counts of a night, with a report.
const campaigns: Readonly<Record<string, (count: number, seed: number, tell: (line: string) => void) => Promise<{ readonly faults: readonly string[] }>>> = {
  kills: killCampaign,
  'kept-kills': keptKillCampaign,
  browsers: browserCampaign,
  mutations: mutationCampaign,
  guided: guidedCampaign,
  works: workCampaign,
  disks: diskCampaign,
  cache: cacheCampaign,
};

const tell = (line: string): void => { process.stdout.write(`${line}\n`); };

async function one(name: string, count = '100', seed = '1'): Promise<boolean> {
  const campaign = campaigns[name];
  if (campaign === undefined) throw new Error(`${name}: no such campaign; would be right: one of ${[...Object.keys(campaigns), 'nightly'].join(', ')}`);
  tell(`${name}, ${count} times, seed ${seed}`);
  const figures = await campaign(Number(count), Number(seed), tell);
  tell(JSON.stringify(figures, null, 2));
  return figures.faults.length > 0;
}

/** Another night, another seed: the day, unless one is given. The report names it. */
function night(report = '.cache/nightly.md', seed = new Date().toISOString().slice(0, 10).replaceAll('-', '')): boolean {
  const found = nightlyCampaign(Number(seed), report, tell);
  tell(`the report: ${report}`);
  return found;
}

const [name = '', ...rest] = process.argv.slice(2);
if (name === 'nightly' ? night(...rest) : await one(name, ...rest)) process.exitCode = 1;
