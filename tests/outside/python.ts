import { spawnSync } from 'node:child_process';

/** Debian's own Python, which sees Debian's packages; another one may come first on the path. Gives what it printed. */
export function askPython(program: string, ...args: string[]): string {
  const ran = spawnSync('/usr/bin/python3', ['-c', program, ...args], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr || String(ran.error));
  return ran.stdout.trim();
}
