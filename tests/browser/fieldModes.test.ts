import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { measure } from './measure';
import { gardenFile, type Screen, screensOfGarden, screensOfPad, workToWalk } from './screensOfGarden';
import { type Host, startHost } from './server';
import { showScreen } from './showScreen';
import { startRound } from './walkRound';
import { watch } from './watch';

const garden = gardenFile();
const upright = { width: 820, height: 1180 };
const settingsBox = 'patina-round.settings';
let host: Host;
let tablet: Tablet;
let faults: string[];
let page: Page;
let pad: readonly Screen[];

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet({ flags: ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'] });
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
  const work = workToWalk(garden.entries);
  await startRound(page, work, true);
  pad = screensOfPad(/round\/([^/]+)/.exec(page.url())![1]!, work.zones);
});

beforeEach(() => page.setViewportSize(upright));

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

const padOf = (name: string): Screen => pad.find((screen) => screen.name === `pad: ${name}`)!;

/** Sets this device as Settings would, and starts the page anew with it. */
const setTo = async (settings: Readonly<Record<string, unknown>>): Promise<void> => {
  await page.evaluate(
    ([box, to]) => {
      const kept = JSON.parse(localStorage.getItem(box as string) ?? '{}');
      localStorage.setItem(box as string, JSON.stringify({ ...kept, ...(to as object) }));
    },
    [settingsBox, settings] as const,
  );
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
};

test('text twice as large on a phone runs out nowhere, on the pad and on the first screen of each place', async () => {
  const session = await page.context().newCDPSession(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await session.send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } });
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  const places = new Set(['#/', '#/next-steps', '#/plan', '#/carry', '#/settings', '#/walk', '#/ready']);
  const firsts = screensOfGarden(garden.entries).filter(({ hash, touch }) => places.has(hash) && !touch);
  const found: string[] = [];
  const asked = pad.filter(({ name }) =>
    ['pad: how much', 'pad: findings', 'pad: which kind', 'pad: note'].includes(name),
  );
  for (const screen of [...asked, ...firsts]) {
    await showScreen(page, screen);
    const wrong = await measure(page, { control: 48, main: 64, apart: 0 });
    found.push(...wrong.map((fault) => `${screen.name}: ${fault}`));
  }
  const size = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  await session.send('Page.setFontSizes', { fontSizes: { standard: 16, fixed: 13 } });
  expect(size).toBe('32px');
  expect(found).toEqual([]);
});

test('turned round, or on half a screen, the pad asks what it asked, keeps what was being written, and shows the answers', async () => {
  const answers = page.getByRole('group', { name: w.round.zone.answers });
  const sizes = [
    [1180, 820],
    [390, 1180],
    [320, 480],
    [1024, 480],
    [1366, 1024],
  ] as const;
  await showScreen(page, padOf('which kind'));
  const question = page.getByRole('group', { name: w.round.ask.kinds(w.round.group.green) });
  for (const [width, height] of sizes) {
    await page.setViewportSize({ width, height });
    await expect.poll(() => question.isVisible(), { message: `${width} x ${height}` }).toBe(true);
    const foot = async () => {
      const box = await answers.boundingBox();
      return box ? box.y + box.height : Number.POSITIVE_INFINITY;
    };
    await expect.poll(foot, { message: `${width} x ${height}: the answers` }).toBeLessThanOrEqual(height);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  }
  await page.setViewportSize(upright);
  await showScreen(page, padOf('note'));
  const note = page.getByRole('dialog').getByRole('textbox');
  await note.fill('a seam under the left arm');
  for (const [width, height] of sizes) {
    await page.setViewportSize({ width, height });
    expect(await note.inputValue(), `${width} x ${height}`).toBe('a seam under the left arm');
  }
  await page.keyboard.press('Escape');
});

test('with the left hand all that is pressed on the pad stands on the left', async () => {
  const middle = async () => {
    const box = await page.getByRole('button', { name: w.round.zone.backToList, exact: true }).boundingBox();
    return box!.x + box!.width / 2;
  };
  await showScreen(page, padOf('how much'));
  await expect.poll(middle).toBeGreaterThan(upright.width / 2);
  await setTo({ hand: 'left' });
  await expect.poll(middle).toBeLessThan(upright.width / 2);
  await setTo({ hand: 'right' });
});

test('in a person’s own few colours what is pressed, and what goes on, can be told and read', async () => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await showScreen(page, padOf('why not'));
  const look = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('button, a[href], .banner, [role=status]')]
        .filter((el) => el.checkVisibility() && el.textContent?.trim())
        .map((el) => {
          const { color, backgroundColor } = getComputedStyle(el);
          const pressed = el.getAttribute('aria-pressed') === 'true';
          return { what: el.textContent?.trim().slice(0, 30), color, backgroundColor, pressed };
        }),
    );
  const seen = await look();
  expect(seen.filter(({ color, backgroundColor }) => color === backgroundColor)).toEqual([]);
  const grounds = (pressed: boolean) =>
    new Set(seen.filter((one) => one.pressed === pressed).map((one) => one.backgroundColor));
  expect(grounds(true).size).toBe(1);
  expect([...grounds(true)].some((ground) => grounds(false).has(ground))).toBe(false);
  await page.emulateMedia({ forcedColors: 'none', reducedMotion: 'reduce' });
});

test('a person who wants nothing to move sees nothing move', async () => {
  for (const screen of [padOf('how much'), { name: 'settings', hash: '#/settings' }]) {
    await showScreen(page, screen);
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((el) => {
          const { transitionDuration, animationName } = getComputedStyle(el);
          return animationName !== 'none' || transitionDuration.split(', ').some((s) => Number.parseFloat(s) > 0);
        })
        .map((el) => el.className),
    );
    expect(moving, screen.name).toEqual([]);
  }
});

test('on wet glass a drop presses nothing, a finger does, and the locked glass opens to a hold only', async () => {
  await showScreen(page, padOf('findings'));
  await setTo({ wetGlass: true, callAndTap: true });
  expect(await measure(page, { control: 64, main: 80, apart: 12 })).toEqual([]);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 1 });
  const lock = page.getByRole('button', { name: w.field.glass.lock, exact: true });
  const locked = page.getByRole('dialog', { name: w.field.glass.locked });
  const touch = async (on: typeof lock, ms: number) => {
    const box = (await on.boundingBox())!;
    const touchPoints = [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }];
    const down = session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
    if (ms > 0) await down.then(() => page.waitForTimeout(ms));
    await Promise.all([down, session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })]);
    await page.waitForTimeout(150);
  };
  // Up in the moment it came down, as a drop that runs off.
  await touch(lock, 0);
  expect(await locked.isVisible()).toBe(false);
  await touch(lock, 120);
  await locked.waitFor();
  const open = locked.getByRole('button');
  await touch(open, 200);
  await page.keyboard.press('Escape');
  expect(await locked.isVisible()).toBe(true);
  await touch(open, 800);
  await locked.waitFor({ state: 'hidden' });
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: false });
  await setTo({ wetGlass: false, callAndTap: false });
});

test('left alone for half an hour it asks who is at work, and the touch that wakes it presses nothing', async () => {
  await showScreen(page, padOf('findings'));
  const leave = page.getByRole('button', { name: w.round.zone.nothing, exact: true });
  await leave.waitFor();
  await page.evaluate(() => localStorage.setItem('patina-round.last touch', String(Date.now() - 31 * 60_000)));
  const before = page.url();
  await leave.click();
  const asked = page.getByRole('dialog', { name: w.field.who.title });
  await asked.waitFor();
  expect(page.url()).toBe(before);
  await asked.getByRole('button').nth(1).click();
  await asked.waitFor({ state: 'hidden' });
  await page
    .getByRole('banner')
    .filter({ hasText: w.shell.surveyor('') })
    .waitFor();
});

test('the check before the field finds every file kept, room by a trial write, and says when the tablet is full', async () => {
  await showScreen(page, { name: 'ready', hash: '#/ready' });
  // A second try begins where the first one did: with nothing checked.
  await page.reload();
  const check = page.getByRole('button', { name: w.ready.do, exact: true });
  const again = page.getByRole('button', { name: w.ready.again, exact: true });
  const line = (about: keyof typeof w.ready.about) =>
    page.getByRole('listitem').filter({ hasText: `${w.ready.about[about]}.` });
  await check.click();
  await again.waitFor({ timeout: 60_000 });
  expect(await line('offline').textContent()).toMatch(/All \d{3} files of the app lie on this tablet/);
  expect(await line('room').textContent()).toMatch(/100 MB were written on trial .* room for 25 photos at least/);
  expect(await line('camera').textContent()).toContain(w.ready.found['camera: opens']({}));
  expect(await page.getByRole('listitem').count()).toBe(Object.keys(w.ready.about).length);
  const left = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
  expect(left).not.toContain('patina-round-trial');
  expect(faults).toEqual([]);
});

test('a tablet that takes no more is found out before the ladder, by the check', async () => {
  await tablet.close({ keepProfile: true });
  // The browser remembers for a while how much room there was: it starts anew with little.
  tablet = await startTablet({ profile: tablet.profile });
  faults = await watch(tablet.context, host.url);
  const session = await tablet.context.newCDPSession(tablet.context.pages()[0]!);
  const origin = new URL(host.url).origin;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 12_000_000 });
  page = await openApp(tablet, host, '#/ready');
  await page.getByRole('button', { name: w.ready.do, exact: true }).click();
  const room = page.getByRole('listitem').filter({ hasText: `${w.ready.about.room}. ${w.ready.state.look}` });
  await room.getByText(/The tablet took only/).waitFor({ timeout: 60_000 });
  await room.getByRole('link', { name: w.ready.act.room, exact: true }).waitFor();
  expect(faults).toEqual([]);
});
