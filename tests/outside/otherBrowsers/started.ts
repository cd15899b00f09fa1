import { type ChildProcess, spawn } from 'node:child_process';

/** A program in a process group of its own, so that it goes with all it started. */
export interface Started {
  readonly running: ChildProcess;
  /** What it has said so far on both outputs. */
  said(): string;
  /** The first group of a pattern, once it has said it. */
  says(pattern: RegExp, seconds: number): Promise<string>;
  end(): Promise<void>;
}

export function start(program: string, args: readonly string[], env: NodeJS.ProcessEnv = process.env): Started {
  const running = spawn(program, args, { detached: true, stdio: ['ignore', 'pipe', 'pipe'], env });
  let text = '';
  for (const stream of [running.stdout, running.stderr])
    stream?.on('data', (piece) => {
      text = (text + piece).slice(-20_000);
    });
  running.once('error', (error) => {
    text += String(error);
  });
  const endAll = () => {
    try {
      if (running.pid) process.kill(-running.pid, 'SIGKILL');
    } catch {
      // Already gone.
    }
  };
  process.once('exit', endAll);
  return {
    running,
    said: () => text,
    async says(pattern, seconds) {
      for (let tries = 0; tries < seconds * 10; tries += 1) {
        const found = pattern.exec(text)?.[1];
        if (found !== undefined) return found;
        if (running.exitCode !== null) break;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error(`${program} did not say ${pattern} within ${seconds} s. It said:\n${text}`);
    },
    async end() {
      process.removeListener('exit', endAll);
      const gone = (running.exitCode ?? running.signalCode) !== null || !running.pid;
      const ended = new Promise<void>((resolve) => (gone ? resolve() : running.once('exit', () => resolve())));
      endAll();
      await ended;
    },
  };
}
