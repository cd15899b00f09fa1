import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { w } from '../../src/words';
import { openApp } from './app';
import { axeFaults } from './axe';
import { startTablet, type Tablet } from './chromium';
import { measure } from './measure';
import { gardenFile, type Screen, screensOfGarden, screensOfPad, workToWalk } from './screensOfGarden';
import { type Host, startHost } from './server';
import { showScreen } from './showScreen';
import { startRound } from './walkRound';
import { watch } from './watch';

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

/** A hundred screens, each read by axe: a busy machine needs its time. A limit against hanging only. */
const soManyScreens = 900_000;

/** Only contrast hangs on the theme as well as on the size: what else axe asks for is asked once for each size. */
const looks = [
  { theme: 'light', size: 'tablet', onlyContrast: false },
  { theme: 'light', size: 'phone', onlyContrast: true },
  { theme: 'sun', size: 'tablet', onlyContrast: true },
  { theme: 'sun', size: 'phone', onlyContrast: false },
] as const;

test.each(looks)(
  'every screen of the garden can be read and hit, $theme theme on a $size',
  async ({ theme, size, onlyContrast }) => {
    await page.setViewportSize(sizes[size]);
    await show(screens.find(({ name }) => name === 'settings')!);
    await page.getByRole('radio', { name: w.settings.themes[theme] }).check();
    const found: string[] = [];
    for (const screen of [...screens, ...ofPad]) {
      if (!(await show(screen))) found.push(`${screen.name}: has no heading of its own`);
      const open = await page.getByRole('dialog').isVisible();
      if (open !== (screen.sheet === true)) found.push(`${screen.name}: its sheet is ${open ? 'open' : 'not open'}`);
      const wrong = [
        ...(await measure(page, screen.field ? onTheLadder : atTheDesk)),
        ...(await axeFaults(page, onlyContrast)),
      ];
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
