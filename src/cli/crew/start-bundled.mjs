// Where the command runs bundled, its threads run by the same program; its folder is what they are given.
import { workerData } from 'node:worker_threads';
import { run } from '../program/load.mjs';

await run(workerData, './thread.js');
