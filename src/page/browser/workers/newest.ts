/** Lets messages that wait come in. */
export const breath = (ms = 0): Promise<void> => new Promise((resolve) => { setTimeout(resolve, ms); });

/**
 * Works on the newest order only: those that come while one is worked on wait, and of them just the last is taken.
 * `isStale` tells the work, after a breath, that a newer order waits.
 */
export function newestOnly<Order>(work: (order: Order, isStale: () => boolean) => Promise<void>): (order: Order) => void {
  let waiting: Order | null = null;
  let isBusy = false;
  const workOff = async (): Promise<void> => {
    isBusy = true;
    while (waiting !== null) {
      const order: Order = waiting;
      waiting = null;
      await work(order, () => waiting !== null);
      await breath();
    }
    isBusy = false;
  };
  return (order) => {
    waiting = order;
    if (!isBusy) void workOff();
  };
}
