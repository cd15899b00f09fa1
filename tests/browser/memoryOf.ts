import { readdirSync, readFileSync } from 'node:fs';

const groupOf = (pid: string): number | undefined => {
  try {
    return Number(
      readFileSync(`/proc/${pid}/stat`, 'utf8')
        .replace(/^.*\) /, '')
        .split(' ')[2],
    );
  } catch {
    return undefined;
  }
};

/** Memory of a process in bytes, what it shares with others counted in part (Linux, "Pss"); 0 for one that just ended. */
const memory = (pid: string): number => {
  try {
    const rollup = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8');
    return 1024 * Number(/^Pss:\s+(\d+) kB/m.exec(rollup)?.[1] ?? 0);
  } catch {
    return 0;
  }
};

/** All processes of a browser, which lead a group of their own. */
const ofGroup = (group: number): number =>
  readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name) && groupOf(name) === group)
    .reduce((sum, pid) => sum + memory(pid), 0);

/** Watches the memory of a whole browser until `peak` is asked for. Bytes. */
export const memoryWatched = (group: number): { readonly before: number; peak(): number } => {
  const before = ofGroup(group);
  let most = before;
  const timer = setInterval(() => {
    most = Math.max(most, ofGroup(group));
  }, 250);
  return {
    before,
    peak: () => {
      clearInterval(timer);
      return most;
    },
  };
};
