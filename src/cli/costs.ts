/** What work costs in units of a picture's drawing, about a tenth of a second: for estimates alone. */
export const COST = { plan: 10, guide: 8, copy: 3 } as const;
