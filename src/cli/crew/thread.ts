/** What runs in a thread of its own: does what it is sent, one job after another. */
import { parentPort } from 'node:worker_threads';
import { newHand } from './hand.ts';
import type { Answer, Job } from './types.ts';

const hand = newHand();
const port = parentPort;

port?.on('message', ({ work, given }: Job) => {
  void hand(work, given)
    .then((made): Answer => ({ made }), (error: unknown): Answer => ({ failed: error instanceof Error ? error.message : String(error) }))
    .then((answer) => { port.postMessage(answer); });
});
