// Where the command runs unbundled, its threads too read TypeScript as it is.
import { register } from 'tsx/esm/api';

register();
await import('./thread.ts');
