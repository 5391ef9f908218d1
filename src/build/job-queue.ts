// Jobs handed over one by one, from whoever makes them to whoever takes them, while more are being made.

/** A queue that is filled at one end and emptied at the other until it is closed. */
export interface JobQueue<Job> extends AsyncIterable<Job> {
  push(job: Job): void;
  /** No more jobs will come. */
  close(): void;
  /** How many jobs were pushed so far. */
  readonly count: number;
}

/** An empty queue; any number of takers may wait at its end. */
export function openQueue<Job>(): JobQueue<Job> {
  const jobs: Job[] = [];
  const waiting: ((result: IteratorResult<Job, undefined>) => void)[] = [];
  let isClosed = false;
  let count = 0;
  const next = (): Promise<IteratorResult<Job, undefined>> => {
    if (jobs.length > 0) return Promise.resolve({ done: false, value: jobs.shift()! });
    if (isClosed) return Promise.resolve({ done: true, value: undefined });
    return new Promise((resolve) => waiting.push(resolve));
  };
  return {
    push: (job) => {
      count += 1;
      const taker = waiting.shift();
      if (taker) taker({ done: false, value: job });
      else jobs.push(job);
    },
    close: () => {
      isClosed = true;
      for (const taker of waiting.splice(0)) taker({ done: true, value: undefined });
    },
    get count() { return count; },
    [Symbol.asyncIterator]: () => ({ next }),
  };
}
