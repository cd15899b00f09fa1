import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { WebSocket } from 'undici';
import { callLimit, type Driver, type Handle, within } from './driver';
import { start } from './started';

interface Answer {
  readonly id?: number;
  readonly type?: string;
  readonly message?: string;
  readonly error?: string;
  readonly method?: string;
  readonly result?: unknown;
  readonly params?: { readonly level?: string; readonly text?: string };
}

/** Nothing of the browser's own may ask the network or open a page of greeting. */
const preferences = {
  'app.update.disabledForTesting': true,
  'browser.aboutwelcome.enabled': false,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.homepage_override.mstone': 'ignore',
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'browser.safebrowsing.downloads.remote.enabled': false,
};

/** Debian's Firefox ESR, spoken to in WebDriver BiDi (W3C), which it speaks itself: no driver program between. */
export async function startFirefox(home: string): Promise<Driver> {
  const profile = join(home, 'profile');
  const downloads = join(home, 'downloads');
  for (const folder of [profile, downloads]) mkdirSync(folder, { recursive: true });
  const lines = Object.entries(preferences).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  writeFileSync(join(profile, 'user.js'), lines.join('\n'));
  const args = ['--headless', '--no-remote', '--remote-debugging-port=0', '--profile', profile, 'about:blank'];
  const started = start('firefox-esr', args);
  const address = await started.says(/WebDriver BiDi listening on (ws:\S+)/, 60);

  const socket = new WebSocket(`${address}/session`);
  const opened = new Promise<void>((resolve, reject) => {
    socket.onopen = () => resolve();
    socket.onerror = () => reject(new Error(`Firefox did not take the connection. It said:\n${started.said()}`));
  });
  await within(callLimit, 'the connection to Firefox', opened);
  const waiting = new Map<number, (answer: Answer) => void>();
  const faults: string[] = [];
  socket.onmessage = ({ data }) => {
    const answer = JSON.parse(String(data)) as Answer;
    if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
    const { level, text } = answer.params ?? {};
    if (answer.method === 'log.entryAdded' && (level === 'error' || level === 'warn')) faults.push(`${level}: ${text}`);
  };
  let last = 0;
  const call = async <T>(method: string, params: object = {}): Promise<T> => {
    last += 1;
    const id = last;
    const answered = new Promise<Answer>((resolve) => waiting.set(id, resolve));
    socket.send(JSON.stringify({ id, method, params }));
    const answer = await within(callLimit, `Firefox, ${method}`, answered);
    waiting.delete(id);
    if (answer.type === 'error') throw new Error(`Firefox, ${method}: ${answer.error}: ${answer.message}`);
    return answer.result as T;
  };

  const session = await call<{ capabilities: { browserVersion: string } }>('session.new', { capabilities: {} });
  const { contexts } = await call<{ contexts: { context: string }[] }>('browsingContext.getTree');
  const context = contexts[0]!.context;
  await call('session.subscribe', { events: ['log.entryAdded'] });
  await call('browser.setDownloadBehavior', { downloadBehavior: { type: 'allowed', destinationFolder: downloads } });
  await call('browsingContext.setViewport', { context, viewport: { width: 820, height: 1180 } });

  interface Evaluated {
    readonly type: string;
    readonly result?: { readonly type: string; readonly value?: unknown; readonly sharedId?: string };
    readonly exceptionDetails?: { readonly text: string };
  }
  /** A function whose last two arguments are a list of plain values and, if given, an element. */
  const evaluate = async (body: string, args: readonly unknown[], element?: Handle) => {
    const { result, exceptionDetails } = await call<Evaluated>('script.callFunction', {
      functionDeclaration: `async function (given, element) { return (async function () { ${body} }).apply(element, JSON.parse(given)); }`,
      arguments: [{ type: 'string', value: JSON.stringify(args) }, ...(element ? [element] : [])],
      target: { context },
      awaitPromise: true,
    });
    if (!result) throw new Error(`Firefox, in the page: ${exceptionDetails?.text}`);
    return result;
  };
  const act = (type: 'key' | 'pointer', actions: readonly object[]) =>
    call('input.performActions', {
      context,
      actions: [{ type, id: type, actions, ...(type === 'pointer' ? { parameters: { pointerType: 'touch' } } : {}) }],
    });

  const driver: Driver = {
    name: `Firefox ${session.capabilities.browserVersion}`,
    downloads,
    async goTo(url) {
      await call('browsingContext.navigate', { context, url, wait: 'complete' });
    },
    async reload() {
      await call('browsingContext.reload', { context, wait: 'complete' });
    },
    async ask<T>(body: string, ...args: readonly unknown[]) {
      const { value } = await evaluate(
        `return JSON.stringify(await (async function () { ${body} }).apply(null, arguments));`,
        args,
      );
      return (value === undefined ? undefined : JSON.parse(String(value))) as T;
    },
    async find(body, ...args) {
      const { type, sharedId } = await evaluate(body, args);
      return type === 'node' ? { sharedId } : undefined;
    },
    async click(element) {
      await act('pointer', [
        { type: 'pointerMove', x: 0, y: 0, origin: { type: 'element', element } },
        { type: 'pointerDown', button: 0 },
        { type: 'pause', duration: 90 },
        { type: 'pointerUp', button: 0 },
      ]);
    },
    async type(element, text) {
      await evaluate('this.focus();', [], element);
      await act(
        'key',
        [...text].flatMap((value) => [
          { type: 'keyDown', value },
          { type: 'keyUp', value },
        ]),
      );
    },
    async give(element, paths) {
      await call('input.setFiles', { context, element, files: paths });
    },
    async picture() {
      const { data } = await call<{ data: string }>('browsingContext.captureScreenshot', { context });
      return Buffer.from(data, 'base64');
    },
    async print() {
      const { data } = await call<{ data: string }>('browsingContext.print', { context, background: true });
      return Buffer.from(data, 'base64');
    },
    faults: async () => faults,
    async end() {
      socket.close();
      await started.end();
    },
  };
  return driver;
}
