import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { type Browser, type BrowserContext, chromium as playwright } from 'playwright-core';
import { endedWithUs } from './endedWithUs';

/** A Chromium of our own: started by us, spoken to over its debugging port, so that a test can take its life. */
export interface Tablet {
  readonly browser: Browser;
  /** What lives in the profile: storage, workers, caches. */
  readonly context: BrowserContext;
  readonly pid: number;
  /** Folder of the profile: give it to `startTablet` again to go on where this one ended. */
  readonly profile: string;
  /** SIGKILL to the browser and all its processes at once, as when a tablet's system ends it. */
  kill(): Promise<void>;
  /** Ends in good order and removes the profile, unless the profile is to be kept. */
  close(options?: { keepProfile?: boolean }): Promise<void>;
}

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const howTo =
  'The browser tests need a Chromium: install one (on Debian: apt-get install chromium) or name it in the environment variable CHROMIUM.';

const quietFlags = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-default-apps',
  '--disable-extensions',
  '--disable-dev-shm-usage',
  '--disable-features=Translate,OptimizationHints,MediaRouter',
  '--password-store=basic',
  '--mute-audio',
  '--force-color-profile=srgb',
  '--window-size=820,1180',
];

/** Starts a Chromium on a fresh profile, or on the one an earlier tablet left. */
export async function startTablet(options: { profile?: string; flags?: readonly string[] } = {}): Promise<Tablet> {
  const profile = options.profile ?? mkdtempSync(join(tmpdir(), 'patina-round-tablet-'));
  // A killed browser leaves its locks; they would send the new one to a process that is no more.
  for (const lock of ['SingletonLock', 'SingletonCookie', 'SingletonSocket'])
    rmSync(join(profile, lock), { force: true });
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const running = spawn(
    findChromium(),
    [...quietFlags, ...asRoot, ...(options.flags ?? []), `--user-data-dir=${profile}`, 'about:blank'],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const letGo = endedWithUs(() => endAll(running));
  const browser = await playwright.connectOverCDP(await debuggingAddress(running));
  const context = browser.contexts()[0];
  if (!context) throw new Error('Chromium started without a profile to work in.');

  const gone = async (end: () => Promise<void> | void) => {
    const ended = new Promise<void>((resolve) =>
      (running.exitCode ?? running.signalCode) === null ? running.once('exit', () => resolve()) : resolve(),
    );
    await end();
    await ended;
    letGo();
  };
  return {
    browser,
    context,
    pid: running.pid!,
    profile,
    kill: async () => {
      await gone(() => endAll(running));
      await noneLeft(running.pid!);
    },
    async close({ keepProfile = false } = {}) {
      await gone(async () => {
        const session = await browser.newBrowserCDPSession();
        await session.send('Browser.close').catch(() => undefined);
      });
      endAll(running);
      if (!keepProfile) rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/**
 * Waits until no process of the group is left. A browser started on a profile while a helper of the one before is still ending finds
 * files held or half gone, and may clear them: on a tablet the whole group is gone long before a person opens the app again.
 */
async function noneLeft(group: number): Promise<void> {
  // Where nobody reaps the dead they stay in the list, and hold nothing: no reason to wait for ever.
  for (let tries = 0; tries < 200; tries++) {
    try {
      process.kill(-group, 0);
    } catch {
      return;
    }
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

/** The first Chromium there is: named in CHROMIUM, the system's, Playwright's own; on Debian one is brought. */
export function findChromium(): string {
  const named = process.env.CHROMIUM;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM names ${named}, and there is no such file.`);
    return named;
  }
  return onPath() ?? playwrightsOwn() ?? fromDebian();
}

function onPath(): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find((file) => existsSync(file));
}

function playwrightsOwn(): string | undefined {
  const file = playwright.executablePath();
  return file && existsSync(file) ? file : undefined;
}

function fromDebian(): string {
  const ran = (args: string[]) =>
    spawnSync('apt-get', args, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      // A registry that does not answer is told, not waited for.
      timeout: 600_000,
    }).status === 0;
  const brought =
    existsSync('/usr/bin/apt-get') &&
    ran(['update']) &&
    ran(['install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation']);
  const found = brought ? onPath() : undefined;
  if (!found) throw new Error(howTo);
  return found;
}

function debuggingAddress(running: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(
      () => reject(new Error(`Chromium did not start within a minute. It said:\n${said}`)),
      60_000,
    );
    running.stderr!.on('data', (piece) => {
      said = (said + piece).slice(-20_000);
      const address = /DevTools listening on (ws:\/\/\S+)/.exec(said)?.[1];
      if (address) {
        clearTimeout(late);
        resolve(address);
      }
    });
    running.once('error', reject);
    running.once('exit', () => reject(new Error(`Chromium ended at once. It said:\n${said}`)));
  });
}

/** The whole process group, as we started it detached. */
function endAll(running: ChildProcess): void {
  try {
    process.kill(-running.pid!, 'SIGKILL');
  } catch {
    // Already gone.
  }
}
