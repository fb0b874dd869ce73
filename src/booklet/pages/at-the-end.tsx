import type { ReactNode } from 'react';
import { lastChecks } from './last-checks.tsx';
import { safeLoad } from './safe-load.tsx';
import type { BookletInput } from './types.ts';

/** White between the last checks and safe use on one page, mm. */
const between = 6;

/** The last checks and safe use, each on pages of its own; on one page what is left of the checks and all of safe use, where that fits. */
export function atTheEnd(input: BookletInput): readonly ReactNode[] {
  const checks = lastChecks(input);
  const last = checks.at(-1);
  const nodes = checks.map(({ node }) => node);
  const [shared, ...more] = last === undefined ? [] : safeLoad(input, last.height + between);
  if (last === undefined || shared === undefined || more.length > 0) return [...nodes, ...safeLoad(input).map(({ node }) => node)];
  return [...nodes.slice(0, -1), <>{last.node}<div style={{ height: `${between}mm` }} />{shared.node}</>];
}
