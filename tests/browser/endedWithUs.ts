const ends = new Set<() => void>();
const endAll = () => {
  for (const end of ends) end();
};
process.once('exit', endAll);
// Vitest ends its workers by a signal, which calls no handler of the exit: a browser left behind would slow every later test.
process.once('SIGTERM', () => {
  endAll();
  process.kill(process.pid, 'SIGTERM');
});

/** What a process started ends with it, however that comes; call what is returned once it has ended otherwise. */
export function endedWithUs(end: () => void): () => void {
  ends.add(end);
  return () => ends.delete(end);
}
