import { expect, test } from 'vitest';
import { freshName, open, surroundings } from './around';
import { batchOf, entry } from './batches';

/** Web Locks as two tabs of one browser share them: one holder a name, a line of those who wait, stealing. */
const sharedLocks = () => {
  interface Holder {
    end(error?: Error): void;
  }
  let holder: Holder | undefined;
  const line: (() => void)[] = [];
  const grant = (granted: (lock: unknown) => Promise<void> | undefined): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const mine: Holder = { end: (error) => (error ? reject(error) : resolve(undefined)) };
      holder = mine;
      void Promise.resolve(granted({})).then(() => {
        resolve(undefined);
        if (holder !== mine) return;
        holder = undefined;
        line.shift()?.();
      });
    });
  return {
    request: (
      _name: string,
      options: { ifAvailable?: boolean; steal?: boolean; signal?: AbortSignal },
      granted: (lock: unknown) => Promise<void> | undefined,
    ): Promise<unknown> => {
      if (!holder) return grant(granted);
      if (options.steal) {
        holder.end(new DOMException('taken', 'AbortError'));
        return grant(granted);
      }
      if (options.ifAvailable) return Promise.resolve(granted(null));
      return new Promise((resolve, reject) => {
        const go = () => void grant(granted).then(resolve, reject);
        options.signal?.addEventListener('abort', () => {
          const at = line.indexOf(go);
          if (at >= 0) line.splice(at, 1);
          reject(new DOMException('no longer waiting', 'AbortError'));
        });
        line.push(go);
      });
    },
  };
};

const zoneSaid = (deed: string) => batchOf(deed, [entry(`${deed}-1`, `zone/${deed}`, { letter: 'A' })]);

test('the second tab only reads; after taking over it writes, and the first one only reads', async () => {
  const locks = sharedLocks();
  const around = surroundings(1, { locks });
  const name = freshName();
  const first = await open(name, around);
  const second = await open(name, around);
  expect([first.mode, second.mode]).toEqual(['writing', 'reading']);
  await first.commit(zoneSaid('one'));
  await expect(second.commit(zoneSaid('two'))).rejects.toMatchObject({ name: 'StoreProblem' });
  expect(second.canTakeOver).toBe(true);
  let told = 0;
  first.watchMode(() => {
    told += 1;
  });
  await second.takeOver();
  await expect.poll(() => [first.mode, second.mode]).toEqual(['reading', 'writing']);
  expect(told).toBeGreaterThan(0);
  await second.commit(zoneSaid('two'));
  await expect(first.commit(zoneSaid('three'))).rejects.toMatchObject({ name: 'StoreProblem' });
  expect((await second.allEntries()).map((e) => [e.id, e.n])).toEqual([
    ['one-1', 1],
    ['two-1', 2],
  ]);
  first.close();
  second.close();
});

test('when the writing tab is closed, the one that waited writes', async () => {
  const locks = sharedLocks();
  const around = surroundings(2, { locks });
  const name = freshName();
  const first = await open(name, around);
  const second = await open(name, around);
  first.close();
  await expect.poll(() => second.mode).toBe('writing');
  await second.commit(zoneSaid('one'));
  second.close();
});
