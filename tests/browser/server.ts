import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { endedWithUs } from './endedWithUs';

/** A host for the built app in a process of its own, which a test may end and start again on the same port. */
export interface Host {
  /** Address of the app, with a slash at the end. */
  readonly url: string;
  readonly port: number;
  stop(): Promise<void>;
}

export interface Hosting {
  /** A free one when left out. */
  port?: number;
  /** Folder of the build, `dist` or the one named in BUILT_APP when left out: another folder is how a test puts out a new version. */
  folder?: string;
  /** Sub-path the app lies under, e.g. `/rounds/`. */
  under?: string;
}

/** Several people may build one checkout at once, each into a folder of their own. */
export const built = process.env.BUILT_APP ?? 'dist';

export async function startHost(hosting: Hosting = {}): Promise<Host> {
  // A port that was free may be taken by somebody else a moment later.
  for (let tries = 0; hosting.port === undefined && tries < 2; tries++) {
    const host = await hostOn(await freePort(), hosting).catch(() => undefined);
    if (host) return host;
  }
  return hostOn(hosting.port ?? (await freePort()), hosting);
}

async function hostOn(on: number, { folder = built, under = '/' }: Hosting): Promise<Host> {
  if (!existsSync(join(folder, 'index.html')))
    throw new Error(`There is no built app in ${folder}: run npm run build first.`);
  const url = `http://localhost:${on}${under}`;
  const vite = join('node_modules', 'vite', 'bin', 'vite.js');
  const running = spawn(
    process.execPath,
    [vite, 'preview', '--host', 'localhost', '--port', String(on), '--strictPort', '--outDir', folder, '--base', under],
    { stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, VITEST: '' } },
  );
  const letGo = endedWithUs(() => running.kill('SIGKILL'));
  await answering(url, running).catch((error: unknown) => {
    running.kill('SIGKILL');
    letGo();
    throw error;
  });
  return {
    url,
    port: on,
    async stop() {
      letGo();
      const ended = new Promise<void>((resolve) => running.once('exit', () => resolve()));
      if (!running.kill('SIGKILL')) return;
      await ended;
    },
  };
}

async function answering(url: string, running: ChildProcess): Promise<void> {
  let said = '';
  running.stderr!.on('data', (piece) => {
    said += piece;
  });
  for (let tries = 0; tries < 1200; tries++) {
    if (running.exitCode !== null) throw new Error(`The host of the built app ended at once. It said:\n${said}`);
    const answer = await fetch(url).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`The host of the built app did not answer at ${url} within a minute. It said:\n${said}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, 'localhost', () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}
