import fc from 'fast-check';

import { everything } from './samples.js';

// What `npm test` draws at random it draws alike each time, on every machine; `npm run test:all` draws anew, and tells the
// seed of what it found.
if (!everything) fc.configureGlobal({ seed: 20240611 });
