import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Entry } from '../../src/engine/record';
import { w } from '../../src/words';
import { slow } from '../bench/slowed';
import { carryIn, fileOf, goTo, openApp, tabletUpright } from './app';
import { startTablet, type Tablet } from './chromium';
import { gardenFile, type Screen, screensOfGarden, screensOfPad, workToWalk } from './screensOfGarden';
import { type Host, startHost } from './server';
import { noteShifts, shiftsOf } from './shifts';
import { goToHash, settled, showScreen } from './showScreen';
import { startRound } from './walkRound';

/**
 * Layout shift score (Layout Instability, W3C Community Group) of all that moved without a touch since a screen came up. web.dev calls 0.1 good;
 * what is pressed on the ladder must not move at all, and the browser counts from 3 px on.
 */
const most = { field: 0, desk: 0.05 };
const garden = gardenFile();
const all = screensOfGarden(garden.entries);
const named = (...names: string[]): Screen[] => names.map((name) => all.find((screen) => screen.name === name)!);

let host: Host;
let tablet: Tablet;
let page: Page;
let pad: (name: string) => Screen;

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  await tablet.context.addInitScript(noteShifts);
  page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
  const work = workToWalk(garden.entries);
  await startRound(page, work, true);
  const ofPad = screensOfPad(/round\/([^/]+)/.exec(page.url())![1]!, work.zones);
  pad = (name) => ofPad.find((screen) => screen.name === name)!;
  await slow(page);
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

/** What moved since the screen came up, until nothing is read any more and a while after: a sentence where it was too much. */
async function moved(screen: Screen): Promise<string[]> {
  await settled(page);
  await page.waitForTimeout(600);
  const { score, worst } = await shiftsOf(page);
  return score > (screen.field ? most.field : most.desk) ? [`${screen.name}: ${score.toFixed(3)}, ${worst}`] : [];
}

test.each([
  {
    on: 'tablet',
    size: tabletUpright,
    desk: ['sculptures', 'sculpture', 'next steps', 'keeping', 'settings', 'strip'],
    ladder: ['walk past all works', 'look', 'end of round'],
    pads: ['walk', 'pad: how much', 'pad: findings'],
  },
  {
    on: 'phone',
    size: { width: 390, height: 844 },
    desk: ['sculptures', 'sculpture', 'outlines'],
    ladder: ['walk past all works', 'end of round'],
    pads: ['pad: how much'],
  },
])('nothing moves without a touch once a screen stands, on a $on', async ({ size, desk, ladder, pads }) => {
  await page.setViewportSize(size);
  const faults: string[] = [];
  for (const screen of [...named(...desk, ...ladder), ...pads.map(pad)]) {
    // Coming from its like: the row of acts above is another at the desk.
    await goToHash(page, screen.field ? pad('pad: which kind').hash : '#/nowhere');
    await settled(page);
    await shiftsOf(page);
    await showScreen(page, screen);
    faults.push(...(await moved(screen)));
  }
  expect(faults).toEqual([]);
});

test('nor after a cold start', async () => {
  await page.setViewportSize(tabletUpright);
  const faults: string[] = [];
  for (const screen of [
    ...named('sculptures', 'sculpture', 'walk past all works', 'end of round'),
    pad('pad: how much'),
  ]) {
    await page.goto('about:blank');
    await page.goto(host.url + screen.hash);
    faults.push(...(await moved(screen)));
  }
  expect(faults).toEqual([]);
});

/** To be run before the page's own code: the worker of the figures is given nothing to do before `letGo` is called. */
const holdFigures = (): void => {
  const Known = Worker;
  const held: (() => void)[] = [];
  let hold = true;
  Object.assign(globalThis, {
    Worker: class extends Known {
      private readonly ofFigures: boolean;
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.ofFigures = /figures/.test(String(address));
      }
      override postMessage(...given: [unknown]) {
        if (hold && this.ofFigures) held.push(() => super.postMessage(...given));
        else super.postMessage(...given);
      }
    },
    letGo: () => {
      hold = false;
      for (const go of held.splice(0)) go();
    },
  });
};

/** The works as they stand: number and place of each. */
const works = (of: Page): Promise<string[]> =>
  of
    .locator('.works > li')
    .evaluateAll((all) =>
      all.map((one) => `${/SW-\d+/.exec(one.textContent)?.[0]} at ${one.getBoundingClientRect().top + scrollY}`),
    );

test.each([tabletUpright, { width: 390, height: 844 }])(
  'the list of works keeps every work in its place while figures come, $width px wide, and is put in order by a touch',
  async (size) => {
    const own = await startTablet();
    try {
      await own.context.addInitScript(holdFigures);
      const first = await openApp(own, host);
      await first.setViewportSize(size);
      await carryIn(first, fileOf({ ...garden, entries: garden.entries.map(asReal) }));
      await goTo(first, 'sculptures');
      const waiting = first.getByText(w.sculptures.workingOut);
      await waiting.first().waitFor();
      await settled(first);
      const before = await works(first);
      await first.evaluate(() => (globalThis as unknown as { letGo: () => void }).letGo());
      await waiting.first().waitFor({ state: 'detached' });
      const order = first.getByRole('button', { name: w.sculptures.orderTake, exact: true });
      await order.waitFor();
      expect(await works(first)).toEqual(before);
      await order.click();
      await order.waitFor({ state: 'hidden' });
      const numbers = (list: string[]) => list.map((one) => one.slice(0, 5));
      expect(numbers(await works(first))).not.toEqual(numbers(before));
    } finally {
      await own.close();
    }
  },
);

const asReal = (entry: Entry): Entry => {
  const { invented: _, ...body } = entry.body;
  return { ...entry, body } as Entry;
};
