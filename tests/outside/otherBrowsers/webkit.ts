import { mkdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { join, resolve } from 'node:path';
import { callLimit, type Driver } from './driver';
import { start } from './started';

/** How WebDriver names an element in what it sends (W3C WebDriver, "web element identifier"). */
const elementKey = 'element-6066-11e4-a52e-4f735466cecf';

/** Debian's WebKitGTK through its own WebKitWebDriver, which speaks WebDriver (W3C), on a screen that nobody sees. */
export async function startWebKit(home: string): Promise<Driver> {
  const profile = join(home, 'profile');
  const downloads = join(home, 'downloads');
  for (const folder of [profile, downloads]) mkdirSync(folder, { recursive: true });
  // It takes a free display and says which.
  const screen = start('Xvfb', ['-displayfd', '1', '-screen', '0', '900x1300x24', '-nolisten', 'tcp']);
  const display = `:${await screen.says(/^(\d+)$/m, 30)}`;
  const port = await freePort();
  const env = { ...process.env, DISPLAY: display, NO_AT_BRIDGE: '1', GTK_USE_PORTAL: '0' };
  const driving = start('WebKitWebDriver', [`--port=${port}`], env);
  const base = `http://127.0.0.1:${port}`;
  await answering(`${base}/status`);

  const call = async <T>(method: string, path: string, body?: object): Promise<T> => {
    const answer = await fetch(base + path, {
      method,
      ...(method === 'POST' ? { body: JSON.stringify(body ?? {}) } : {}),
      signal: AbortSignal.timeout(callLimit * 1000),
    }).catch((error) => {
      throw new Error(`WebKit, ${method} ${path}: ${error}. It said:\n${driving.said()}`);
    });
    const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
    if (!answer.ok) throw new Error(`WebKit, ${method} ${path}: ${value.error}: ${value.message}`);
    return value;
  };
  // Debian's own Python sees Debian's packages; another may come first on the path.
  const args = [resolve('tests/outside/otherBrowsers/webkitWindow.py'), profile, downloads];
  const { sessionId, capabilities } = await call<{ sessionId: string; capabilities: { browserVersion: string } }>(
    'POST',
    '/session',
    { capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': { binary: '/usr/bin/python3', args } } } },
  );
  const at = `/session/${sessionId}`;
  await call('POST', `${at}/timeouts`, { script: callLimit * 1000, pageLoad: callLimit * 1000 });
  const execute = <T>(body: string, args: readonly unknown[]) =>
    call<T>('POST', `${at}/execute/async`, {
      script: `
        const done = arguments[arguments.length - 1];
        const given = [...arguments].slice(0, -1);
        (async function () { ${body} }).apply(null, given).then((value) => done({ value }), (e) => done({ failed: String(e) }));`,
      args,
    });
  const answered = async <T>(body: string, args: readonly unknown[]): Promise<T> => {
    const { value, failed } = await execute<{ value: T; failed?: string }>(body, args);
    if (failed) throw new Error(`WebKit, in the page: ${failed}`);
    return value;
  };
  const element = (handle: unknown) => `${at}/element/${(handle as Record<string, string>)[elementKey]}`;
  const faults: string[] = [];
  /** The page's list goes with the page: kept before each going. */
  const keepFaults = async () => {
    const found = await answered<string[]>('return window.faultsOfPage ? window.faultsOfPage.splice(0) : [];', []);
    faults.push(...found);
  };

  return {
    name: `WebKitGTK ${capabilities.browserVersion}`,
    downloads,
    async goTo(url) {
      await keepFaults();
      await call('POST', `${at}/url`, { url });
    },
    async reload() {
      await keepFaults();
      await call('POST', `${at}/refresh`);
    },
    ask: (body, ...args) => answered(body, args),
    find: async (body, ...args) => (await answered<object | null>(body, args)) ?? undefined,
    async click(handle) {
      await call('POST', `${element(handle)}/click`);
    },
    async type(handle, text) {
      await call('POST', `${element(handle)}/value`, { text });
    },
    async give(handle, paths) {
      await call('POST', `${element(handle)}/value`, { text: paths.join('\n') });
    },
    picture: async () => Buffer.from(await call<string>('GET', `${at}/screenshot`), 'base64'),
    async faults() {
      await keepFaults();
      return faults;
    },
    async end() {
      await driving.end();
      await screen.end();
    },
  };
}

async function answering(url: string): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    const answer = await fetch(url, { signal: AbortSignal.timeout(2000) }).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('WebKitWebDriver did not answer within ten seconds.');
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}
