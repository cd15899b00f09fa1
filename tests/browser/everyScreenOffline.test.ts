import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { w } from '../../src/words';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { gardenFile, screensOfGarden } from './screensOfGarden';
import { type Host, startHost } from './server';
import { settled } from './showScreen';
import { watch } from './watch';

const garden = gardenFile();
const screens = screensOfGarden(garden.entries).filter(({ touch }) => !touch);

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  const real = garden.entries.map((entry) => {
    const { invented: _, ...body } = entry.body;
    return { ...entry, body };
  });
  await carryIn(page, fileOf({ collection: garden.collection, entries: real }));
  await goTo(page, 'sculptures');
  await host.stop();
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

/** A hundred starts: a busy machine needs its time. A limit against hanging only. */
const soManyStarts = 900_000;

test(
  'with the host gone every screen opens from a cold start',
  async () => {
    const titles = new Map<string, string>();
    const broken: string[] = [];
    for (const screen of screens) {
      await page.goto('about:blank');
      await page.goto(host.url + screen.hash);
      const title = await settled(page);
      titles.set(screen.name, title);
      if (title === w.shell.broken) broken.push(`${screen.name}: ${await page.locator('main').textContent()}`);
      if (title === w.shell.lost && screen.name !== 'no such screen') broken.push(`${screen.name}: ${title}`);
    }
    expect(broken).toEqual([]);
    expect(new Set(titles.values()).size).toBeGreaterThan(15);
    expect(faults).toEqual([]);
  },
  soManyStarts,
);
