import { afterEach, expect, test } from 'vitest';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

test.each(['/', '/rounds/'])(
  'after one visit to %s the page opens again with no host and after a kill',
  async (under) => {
    host = await startHost({ under });
    tablet = await startTablet();
    let faults = await watch(tablet.context, host.url);
    const page = await tablet.context.newPage();
    await page.goto(host.url);
    await page.evaluate(() => navigator.serviceWorker.ready.then((r) => r.active?.state));
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    const title = await page.getByRole('heading', { level: 1 }).textContent();
    expect(title).toBeTruthy();

    await host.stop();
    await page.reload();
    await page.getByRole('heading', { level: 1, name: title! }).waitFor();
    expect(faults).toEqual([]);

    await tablet.kill();
    tablet = await startTablet({ profile: tablet.profile });
    faults = await watch(tablet.context, host.url);
    const again = await tablet.context.newPage();
    await again.goto(host.url);
    await again.getByRole('heading', { level: 1, name: title! }).waitFor();
    expect(faults).toEqual([]);

    // Every address under ours opens the app but those of the server's folder, which only the server can answer.
    await again.goto(`${host.url}folders`);
    await again.getByRole('heading', { level: 1, name: title! }).waitFor();
    for (const path of ['folder', 'folder/', 'folder/photos/x.jpg'])
      await expect(again.goto(host.url + path)).rejects.toThrow('ERR_CONNECTION_REFUSED');
  },
);
