import type { ReactNode } from 'react';

/** From one value to another, drawn: fonts of some scripts have no arrow. */
export const Arrow = (): ReactNode => (
  <svg className="arrow" viewBox="0 0 24 12" role="img" aria-label="→"><path d="M1 6H21M16 2L22 6L16 10" fill="none" stroke="currentColor" strokeWidth="2" /></svg>
);
