import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, expect, test } from 'vitest';
import { readSurvey } from '../../src/engine/exchange';
import { type Entry, idPart } from '../../src/engine/record';
import { kindOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { gardenFile } from '../browser/screensOfGarden';
import { type Host, startHost } from '../browser/server';
import type { Driver } from './otherBrowsers/driver';
import { startFirefox } from './otherBrowsers/firefox';
import { OtherPage } from './otherBrowsers/page';
import { startWebKit } from './otherBrowsers/webkit';

const browsers = { Firefox: startFirefox, WebKit: startWebKit };
const words = w.round;
const garden = gardenFile();
/** The work with the fewest zones. */
const work = garden.entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-04')!;
const zones = garden.entries
  .filter(({ kind, within, gone }) => kind === 'zone' && within === work.thing && !gone)
  .map(({ body }) => ({ letter: String(body.letter), name: String(body.name), order: Number(body.order) }))
  .sort((a, b) => a.order - b.order);
const kind = kindOf('green-spots')!.name;

let host: Host;
const running = new Set<Driver>();
const homes: string[] = [];

beforeEach(async () => {
  host = await startHost();
});

afterEach(async () => {
  for (const driver of running) await driver.end();
  running.clear();
  await host?.stop();
});

afterAll(() => {
  for (const home of homes) rmSync(home, { recursive: true, force: true, maxRetries: 5 });
});

async function opened(start: (home: string) => Promise<Driver>, home: string): Promise<OtherPage> {
  const driver = await start(home);
  running.add(driver);
  return new OtherPage(driver);
}

async function ended({ driver }: OtherPage): Promise<void> {
  running.delete(driver);
  await driver.end();
}

/** All that is stored of the demo on this device, by the browser's own word. */
const stored = (page: OtherPage): Promise<Entry[]> =>
  page.driver.ask<Entry[]>(`
    const answered = (request) => new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const { name } = (await indexedDB.databases()).find(({ name }) => name.includes('demo'));
    const opened = await answered(indexedDB.open(name));
    const rows = await answered(opened.transaction('entries').objectStore('entries').getAll());
    opened.close();
    return rows;`);

const zoneTitle = (at: number) => words.zone.title(zones[at]!.letter, zones[at]!.name);

/** Four zones: nothing found any more, a finding with all that is asked of it, as last time, not reached and why. */
async function walkRound(page: OtherPage): Promise<void> {
  // The works come into the order of their need as their figures are read.
  await page.still();
  await page.touch('link', new RegExp(String(work.body.title)));
  await page.touch('link', w.sculptures.work.startRound);
  await page.touch('radio', words.start.wetName.dry);
  await page.touch('radio', words.start.washedName['before wash']);
  await page.touch('button', /^Start the round/);

  await page.find('heading', zoneTitle(0));
  await page.touch('button', words.zone.nothing);
  await page.touch('button', new RegExp(`${words.ask.isGone}$`));
  await page.touch('button', words.zone.nextTo(zones[1]!.letter));

  await page.find('heading', zoneTitle(1));
  for (const name of [words.group.green, kind, 'In the metal', 'about 10 %', 'Slight'])
    await page.touch('button', name);
  await page.touch('button', words.zone.nextTo(zones[2]!.letter));

  await page.find('heading', zoneTitle(2));
  await page.touch('button', /^As (last year|in )/);
  await page.find('heading', zoneTitle(3));
  await page.touch('button', words.zone.notReached);
  await page.touch('button', 'Too wet to judge');

  await page.find('heading', words.end.title);
  const { againSkip, close } = words.end;
  // The last one skipped, the button goes: a touch may come too late for it.
  await page.until('the end of what is asked again', async () => {
    if (await page.touchIfThere('button', againSkip)) return undefined;
    return (await page.isThere('button', close)) || undefined;
  });
  await page.reads(words.end.notLooked(1));
  await page.reads(words.end.carried(1));
  await page.find('heading', words.end.index);
  await page.touch('button', close);
  await page.find('link', words.end.carry);
}

/** Prepares it on the screen Carry and lets it leave: where it lies. */
async function carriedOut(page: OtherPage, make: 'survey' | 'bag'): Promise<string> {
  const { driver } = page;
  const before = readdirSync(driver.downloads);
  await page.open(`${host.url}#/carry`);
  await page.touch('radio', new RegExp(`^${w.carry.makes[make].replace(/[()]/g, '.')}`));
  await page.touch('button', w.carry.prepares[make]);
  await page.reads(make === 'bag' ? w.carry.preparedBag : w.carry.prepared);
  await page.touch('button', w.carry.download);
  // Some browsers write under another name until the file is whole, some do not: whole is what no longer grows.
  let size = 0;
  let same = 0;
  return page.until(`the ${make} among the downloads`, async () => {
    const [name] = readdirSync(driver.downloads).filter((one) => !before.includes(one) && /\.(json|zip)$/.test(one));
    const path = join(driver.downloads, name ?? '');
    const now = name ? statSync(path).size : 0;
    same = now > 0 && now === size ? same + 1 : 0;
    size = now;
    return same >= 10 ? path : undefined;
  });
}

const ids = (entries: readonly Entry[]) => entries.map(({ id }) => id).sort();

test.each(Object.entries(browsers))(
  'a round is walked, carried out and found again after a restart with the host gone, in %s',
  // As with the built app in Chromium: a real browser misses a touch now and then, and the run says so.
  { timeout: 300_000, retry: 1 },
  async (name, startBrowser) => {
    const home = mkdtempSync(join(tmpdir(), `patina-round-${name}-`));
    homes.push(home);
    let page = await opened(startBrowser, home);
    await page.open(host.url);
    await page.until('the worker that keeps the app', () =>
      page.driver.ask<true | undefined>(
        "return navigator.serviceWorker.controller?.state === 'activated' || undefined;",
      ),
    );
    await page.touch('button', w.sculptures.welcome.demo);
    await page.reads(w.shell.inventedWhat);
    await walkRound(page);

    const kept = await stored(page);
    expect(kept.length - garden.entries.length, 'a round, four visits, findings, an end').toBeGreaterThan(5);
    const file = await carriedOut(page, 'survey');
    const read = readSurvey(readFileSync(file));
    expect(read.ok && ids(read.entries)).toEqual(ids(kept));
    const bag = await carriedOut(page, 'bag');
    expect(execFileSync('unzip', ['-tq', bag], { encoding: 'utf8' })).toContain('No errors');

    await page.open(`${host.url}#/next-steps`);
    await page.find('heading', w.nextSteps.title);
    await page.reads(w.nextSteps.order);
    await page.reads(String(work.body.title));
    await page.open(`${host.url}#/papers/condition-report/${encodeURIComponent(work.thing)}`);
    await page.find('button', w.paperHub.print);
    await page.reads(String(work.body.title));
    const pdf = await page.driver.print?.();
    if (pdf) expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    const faults = [...(await page.driver.faults())];

    await ended(page);
    await host.stop();
    page = await opened(startBrowser, home);
    await page.open(host.url);
    await page.touch('button', w.sculptures.welcome.demo);
    await page.find('link', new RegExp(String(work.body.title)));
    expect(ids(await stored(page))).toEqual(ids(kept));
    await page.open(`${host.url}#/sculpture/${idPart(work.thing)}/then-and-now`);
    await page.find('heading', w.thenAndNow.title);
    await page.open(`${host.url}#/carry`);
    await page.driver.give(await page.find('file', /./), [file]);
    await page.reads(w.carry.nothingNew);
    expect([...faults, ...(await page.driver.faults())]).toEqual([]);
    await ended(page);
  },
);
