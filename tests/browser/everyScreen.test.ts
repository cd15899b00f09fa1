import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { w } from '../../src/words';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { measure } from './measure';
import { gardenFile, type Screen, screensOfGarden, screensOfPad, workToWalk } from './screensOfGarden';
import { type Host, startHost } from './server';
import { settled, showScreen } from './showScreen';
import { startRound } from './walkRound';
import { watch } from './watch';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const sizes = { tablet: { width: 820, height: 1180 }, phone: { width: 390, height: 844 } };
const garden = gardenFile();
const screens = screensOfGarden(garden.entries);
/** The words of the field: 64 on the ladder and 80 for the main ones, 12 apart; 48 elsewhere. */
const onTheLadder = { control: 64, main: 80, apart: 12 };
const atTheDesk = { control: 48, main: 48, apart: 0 };

let host: Host;
let tablet: Tablet;
let faults: string[];
let page: Page;
let ofPad: readonly Screen[];

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
  const work = workToWalk(garden.entries);
  await startRound(page, work, true);
  ofPad = screensOfPad(/round\/([^/]+)/.exec(page.url())![1]!, work.zones);
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

const show = (screen: Screen) => showScreen(page, screen);

/** The page's own policy keeps scripts out of the page; the debugger may still bring one. */
async function axeFaults(): Promise<string[]> {
  await page.evaluate(`${axeSource}; 0`);
  const found = await page.evaluate(() =>
    (globalThis as unknown as { axe: typeof axe }).axe.run(document, { resultTypes: ['violations'], preload: false }),
  );
  return found.violations.flatMap(({ id, help, nodes }) =>
    nodes.map(
      ({ target, failureSummary }) => `${id} (${help}): ${target.join(' ')} ${failureSummary?.split('\n')[1] ?? ''}`,
    ),
  );
}

/** A hundred screens, each read by axe: a busy machine needs its time. A limit against hanging only. */
const soManyScreens = 420_000;

const looks = (['light', 'sun'] as const).flatMap((theme) =>
  (Object.keys(sizes) as (keyof typeof sizes)[]).map((size) => ({ theme, size })),
);

test.each(looks)(
  'every screen of the garden can be read and hit, $theme theme on a $size',
  async ({ theme, size }) => {
    await page.setViewportSize(sizes[size]);
    await show(screens.find(({ name }) => name === 'settings')!);
    await page.getByRole('radio', { name: w.settings.themes[theme] }).check();
    const found: string[] = [];
    for (const screen of [...screens, ...ofPad]) {
      if (!(await show(screen))) found.push(`${screen.name}: has no heading of its own`);
      const open = await page.getByRole('dialog').isVisible();
      if (open !== (screen.sheet === true)) found.push(`${screen.name}: its sheet is ${open ? 'open' : 'not open'}`);
      const wrong = [...(await measure(page, screen.field ? onTheLadder : atTheDesk)), ...(await axeFaults())];
      found.push(...wrong.map((fault) => `${screen.name}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
  },
  soManyScreens,
);

test('with gloves on, what is touched on the ladder is 96 px, on the tablet', async () => {
  await page.setViewportSize(sizes.tablet);
  await show(screens.find(({ name }) => name === 'settings')!);
  await page.getByRole('checkbox', { name: w.settings.gloves }).check();
  const found: string[] = [];
  for (const screen of ofPad) {
    await show(screen);
    const wrong = await measure(page, { control: 96, main: 96, apart: 12 });
    found.push(...wrong.map((fault) => `${screen.name}: ${fault}`));
  }
  await show(screens.find(({ name }) => name === 'settings')!);
  await page.getByRole('checkbox', { name: w.settings.gloves }).uncheck();
  expect(found).toEqual([]);
});

describe('with the host gone', () => {
  beforeAll(async () => {
    const real = garden.entries.map((entry) => {
      const { invented: _, ...body } = entry.body;
      return { ...entry, body };
    });
    await page.setViewportSize(sizes.tablet);
    await show(screens[0]!);
    await page.getByRole('button', { name: w.shell.leaveDemo }).click();
    await settled(page);
    await carryIn(page, fileOf({ collection: garden.collection, entries: real }));
    await goTo(page, 'sculptures');
    await host.stop();
  });

  test(
    'every screen opens from a cold start',
    async () => {
      const titles = new Map<string, string>();
      const broken: string[] = [];
      for (const screen of screens.filter(({ touch }) => !touch)) {
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
    soManyScreens,
  );
});
