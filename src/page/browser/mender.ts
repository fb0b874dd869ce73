import type { MenderAnswer, MenderOrder } from './workers/messages.ts';
import { breath } from './workers/newest.ts';
import { remediesOf } from './workers/remedies.ts';
import { orFaulty } from './workers/subject.ts';

/** Worker: which single value would make a check pass. Answers after each parameter that was tried, and when all are. */
addEventListener('message', ({ data: { subject, finding } }: MessageEvent<MenderOrder>) => {
  const tell = (answer: MenderAnswer): void => { postMessage(answer); };
  void orFaulty(subject.run, async () => {
    for (const remedy of remediesOf(subject, finding)) {
      if (remedy !== null) tell({ answer: 'remedy', remedy });
      await breath();
    }
    return { answer: 'tried' as const };
  }).then(tell);
});
