import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import type { Entry } from '../../src/engine/record';
import { w } from '../../src/words';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, carryOut, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { built, type Host, startHost } from './server';
import { answerZone, type Step, startRound, stepsFor, zoneHeading } from './walkRound';

/** What befalls a tablet in the middle of a zone, and what of the touches the screen had shown was lost by it. */
const survey = yearlyRound();
const told: { fault: string; runs: number; lost: number; half: number }[] = [];
let host: Host;
let tablet: Tablet;

beforeAll(async () => {
  host = await startHost();
});

beforeEach(async () => {
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet?.close();
});

afterAll(async () => {
  await host?.stop();
  process.stdout.write('  fault | runs | touches lost | half written\n');
  for (const { fault, runs, lost, half } of told) process.stdout.write(`  ${fault} | ${runs} | ${lost} | ${half}\n`);
});

const scriptOn = (page: Page): readonly Step[] => survey.zones.flatMap((zone) => stepsFor(page, survey, zone, true));

const begun = async (): Promise<Page> => {
  const page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  await startRound(page, survey, true);
  return page;
};

const goOn = async (page: Page, from: number, to: number): Promise<void> =>
  answerZone(new Hand(), scriptOn(page).slice(from, to));

/** The app again on a new page, and whether the round stands as the last touch left it. */
const standsAgain = async (touches: number): Promise<Page> => {
  const page = await openApp(tablet, host);
  await page.getByRole('link', { name: w.sculptures.underWay(survey.title), exact: true }).click();
  await (touches === 0 ? zoneHeading(page, survey.zones[0]!) : scriptOn(page)[touches - 1]!.shows).first().waitFor();
  return page;
};

/** Findings of this year's round as they lie in the file, against those touched: zones left, in order. */
const lostOf = async (page: Page, zones: number): Promise<{ lost: number; half: number }> => {
  await page.getByRole('link', { name: w.product }).click();
  const { entries } = JSON.parse((await carryOut(page)).toString()) as { entries: Entry[] };
  const round = entries.find(({ kind, body }) => kind === 'round' && body.date === survey.day)?.thing;
  const said = (kind: string) => entries.filter((entry) => entry.kind === kind && entry.body.round === round);
  const planned = survey.zones
    .slice(0, zones)
    .reduce((sum, { earlier, plan }) => sum + earlier.length + (plan.what === 'new' ? 1 : 0), 0);
  const [visits, findings] = [said('visit').length, said('finding').length];
  return {
    lost: Math.max(0, zones - visits) + Math.max(0, planned - findings),
    half: visits > zones || findings > planned ? 1 : 0,
  };
};

/** How many touches leave so many zones. */
const touchesOf = (page: Page, zones: number): number =>
  survey.zones.slice(0, zones).reduce((sum, zone) => sum + stepsFor(page, survey, zone, true).length, 0);

const tell = (fault: string, runs: number, { lost, half }: { lost: number; half: number }) => {
  told.push({ fault, runs, lost, half });
  expect({ lost, half }).toEqual({ lost: 0, half: 0 });
};

test('the page’s own process falls six times, at a touch more each time: the round stands where it stood', {
  retry: 0,
}, async () => {
  let page = await begun();
  for (let touches = 1; touches <= 6; touches += 1) {
    await goOn(page, touches - 1, touches);
    const session = await page.context().newCDPSession(page);
    const fell = new Promise((resolve) => page.once('crash', resolve));
    session.send('Page.crash').catch(() => undefined);
    await fell;
    await page.close();
    page = await standsAgain(touches);
  }
  await goOn(page, 6, touchesOf(page, 6));
  tell('the page’s process falls', 6, await lostOf(page, 6));
});

test('a page frozen and thawed goes on; one from which another tab took over while it was frozen only reads', {
  retry: 0,
}, async () => {
  const page = await begun();
  await goOn(page, 0, 3);
  const session = await page.context().newCDPSession(page);
  for (let i = 0; i < 3; i += 1) {
    await session.send('Page.setWebLifecycleState', { state: 'frozen' });
    await new Promise((resolve) => setTimeout(resolve, 1500));
    await session.send('Page.setWebLifecycleState', { state: 'active' });
    await goOn(page, 3 + i, 4 + i);
  }
  await session.send('Page.setWebLifecycleState', { state: 'frozen' });
  const second = await openApp(tablet, host);
  await second.getByRole('button', { name: w.shell.takeOver, exact: true }).click();
  await second.getByText(w.shell.readingOnly).first().waitFor({ state: 'hidden' });
  await second.getByRole('link', { name: w.sculptures.underWay(survey.title), exact: true }).click();
  await scriptOn(second)[5]!.shows.first().waitFor();
  await goOn(second, 6, touchesOf(second, 6));
  await session.send('Page.setWebLifecycleState', { state: 'active' });
  await page.getByText(w.shell.readingOnly).first().waitFor();
  tell('the page is frozen', 4, await lostOf(second, 6));
});

test('a clock set to 2030, and a year back, in the middle of a round changes nothing of what stands', {
  retry: 0,
}, async () => {
  await begun().then((page) => goOn(page, 0, 4));
  let touches = 4;
  let page: Page | undefined;
  for (const days of [1300, -365]) {
    await tablet.kill();
    tablet = await startTablet({ profile: tablet.profile });
    await tablet.context.addInitScript((ms) => {
      const [real, now] = [Date, Date.now];
      globalThis.Date = class extends real {
        constructor(...given: ConstructorParameters<typeof Date> | []) {
          super(...((given.length === 0 ? [now() + ms] : given) as ConstructorParameters<typeof Date>));
        }
        static override now = () => now() + ms;
      } as DateConstructor;
    }, days * 86_400_000);
    page = await standsAgain(touches);
    await goOn(page, touches, touches + 5);
    touches += 5;
  }
  await goOn(page!, touches, touchesOf(page!, 8));
  tell('the clock is set ahead and back', 2, await lostOf(page!, 8));
});

test('a full tablet: the touch is refused with its name and can be made again, the survey still leaves, and with room it is kept', {
  retry: 0,
}, async () => {
  await begun().then((page) => goOn(page, 0, 3));
  await tablet.kill();
  // The browser remembers for a while how much room there was: it starts anew with none.
  tablet = await startTablet({ profile: tablet.profile });
  const session = await (await tablet.context.newPage()).context().newCDPSession(tablet.context.pages()[0]!);
  const origin = new URL(host.url).origin;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  const page = await standsAgain(3);
  for (let i = 0; i < 3; i += 1) {
    await scriptOn(page)[3]!.on.click();
    await page
      .getByText(/The device is full\./)
      .first()
      .waitFor();
  }
  await page.getByRole('link', { name: w.product }).click();
  const { entries } = JSON.parse((await carryOut(page)).toString()) as { entries: Entry[] };
  expect(entries.length).toBeGreaterThan(survey.entries.length);
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await page.close();
  const again = await standsAgain(3);
  await goOn(again, 3, touchesOf(again, 4));
  tell('the tablet is full', 3, await lostOf(again, 4));
});

test('a newer version put out in the middle of a zone waits; started there, the round goes on in it where it stood', {
  retry: 0,
}, async () => {
  const newer = mkdtempSync(join(tmpdir(), 'patina-round-newer-'));
  cpSync(built, newer, { recursive: true });
  const change = (file: string, from: string | RegExp, to: string) => {
    const text = readFileSync(join(newer, file), 'utf8');
    writeFileSync(join(newer, file), text.replace(from, to));
  };
  change('index.html', '<title>', '<title>Newer ');
  change('sw.js', /("revision":")[0-9a-f]+(","url":"index\.html")/, '$1newer$2');
  const page = await begun();
  await goOn(page, 0, 3);
  const { port } = host;
  await host.stop();
  host = await startHost({ port, folder: newer });
  await page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r?.update()));
  const start = page.getByRole('button', { name: w.shell.updateNow, exact: true });
  await goOn(page, 3, 5);
  // Nobody is disturbed on the ladder: it is offered where the work is not.
  expect(await start.count()).toBe(0);
  await page.getByRole('link', { name: w.product }).click();
  await start.waitFor({ timeout: 60_000 });
  await start.click();
  await expect.poll(() => page.title(), { timeout: 30_000 }).toContain('Newer');
  await page.getByRole('link', { name: w.sculptures.underWay(survey.title), exact: true }).click();
  await scriptOn(page)[4]!.shows.first().waitFor();
  await goOn(page, 5, touchesOf(page, 5));
  tell('a newer version in the middle of a zone', 1, await lostOf(page, 5));
  await host.stop();
  host = await startHost();
  rmSync(newer, { recursive: true, force: true });
});

test('away to another page and back, and the page loaded anew: touches go on', { retry: 0 }, async () => {
  const page = await begun();
  for (let i = 0; i < 3; i += 1) {
    await goOn(page, i * 2, i * 2 + 1);
    await page.goto(`${host.url}icon-192.png`);
    // From the browser's own store of pages, where it keeps one: then nothing is loaded.
    await page.goBack({ waitUntil: 'commit' });
    await scriptOn(page)[i * 2]!.shows.first().waitFor();
    await goOn(page, i * 2 + 1, i * 2 + 2);
    await page.reload();
    await scriptOn(page)[i * 2 + 1]!.shows.first().waitFor();
  }
  await goOn(page, 6, touchesOf(page, 5));
  tell('away and back, and loaded anew', 6, await lostOf(page, 5));
});
