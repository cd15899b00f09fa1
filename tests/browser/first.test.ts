import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { goTo, openApp, tabletUpright } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { Keys } from './keys';
import { type Host, startHost } from './server';
import { zoneHeading } from './walkRound';
import { watch } from './watch';

const { welcome, form, work, zone, device } = w.sculptures;
let host: Host;
let tablet: Tablet;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet.close();
  await host.stop();
});

test('from nothing to the end of a first round with the keyboard alone', async () => {
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  const keys = new Keys(page);
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
  const link = (name: string) => page.getByRole('link', { name, exact: true });
  const title = (name: string) => page.getByRole('heading', { level: 1, name });

  await keys.press(button(welcome.own));
  await keys.type(page.getByLabel(welcome.name, { exact: true }), 'Quay collection');
  await keys.type(page.getByLabel(welcome.role, { exact: true }), 'Curator');
  await keys.press(button(welcome.begin));

  await title(form.newTitle).waitFor();
  await keys.type(page.getByLabel(form.title, { exact: true }), 'Lantern for Two Tides');
  await keys.press(button(form.add));

  await title('Lantern for Two Tides').waitFor();
  await keys.press(link(work.addZones));
  await title(zone.title).waitFor();
  await keys.press(link(zone.add));
  await title(zone.newTitle).waitFor();
  await keys.type(page.getByLabel(zone.name, { exact: true }), 'Cap');
  await keys.type(page.getByLabel(zone.areaTyped, { exact: true }), '0.8');
  await keys.press(button(zone.addMore));
  await page.getByText(zone.added('A', 'Cap')).waitFor();
  await keys.type(page.getByLabel(zone.name, { exact: true }), 'Foot');
  await keys.type(page.getByLabel(zone.areaTyped, { exact: true }), '1.6');
  await keys.press(button(zone.addDo));
  await title(zone.title).waitFor();
  await keys.press(link('Lantern for Two Tides'));

  await title('Lantern for Two Tides').waitFor();
  await keys.press(link(work.startRound));
  await title(w.round.start.title).waitFor();
  await keys.choose(page.getByRole('radio', { name: w.round.start.wetName.dry, exact: true }));
  await keys.choose(page.getByRole('radio', { name: w.round.start.washedName['before wash'], exact: true }));
  await keys.press(button(/^Start the round/));

  await zoneHeading(page, { letter: 'A', name: 'Cap' }).waitFor();
  await keys.press(button(w.round.zone.nothing));
  await zoneHeading(page, { letter: 'B', name: 'Foot' }).waitFor();
  await keys.press(button(w.round.group.green));
  await keys.press(button('Green spots'));
  await keys.press(button('In the metal'));
  await keys.press(button('about 10 %'));
  await keys.press(button('Slight'));
  await keys.press(button(w.round.zone.nextEnd));

  await title(w.round.end.title).waitFor();
  await keys.press(button('about 15 %'));
  await page.getByText(w.round.end.seenShare('100 %'), { exact: true }).waitFor();
  await page.getByText(w.round.end.noEarlier).waitFor();
  await keys.press(button(w.round.end.close));
  await link(w.round.end.carry).waitFor();
  expect(faults).toEqual([]);
});

const databases = (page: Page) =>
  page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name).sort());

test('the invented garden comes with one touch, lies apart, and goes without a trace', async () => {
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  const before = await databases(page);
  const hand = new Hand();
  await hand.touch(page.getByRole('button', { name: welcome.demo, exact: true }));
  await page.getByText(w.shell.inventedWhat).waitFor();
  await page.getByRole('link', { name: /SW-01/ }).waitFor();
  expect(hand.touches).toBe(1);
  const works = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: /SW-0\d/ }) });
  await expect.poll(() => works.count()).toBe(6);

  await goTo(page, 'settings');
  await page.getByRole('button', { name: w.settings.removeDemo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: welcome.title }).waitFor();
  await expect.poll(() => databases(page)).toEqual(before);
  expect(faults).toEqual([]);
});

test('an address that is not secure opens, and says what it cannot do', async () => {
  const plain = 'http://rounds.test/';
  // Only an address that is not this very computer is insecure: the browser is given the host's files under one.
  await tablet.context.route(`${plain}**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    await route.fulfill({ response: await route.fetch({ url: host.url + pathname.slice(1) }) });
  });
  const page = await tablet.context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  await page.setViewportSize(tabletUpright);
  await page.goto(plain);
  await page.getByText(device.insecure).waitFor();
  await page.getByText(device.insecureWhat).waitFor();
  // What the page still asks for when the browser goes is nobody's fault.
  await tablet.context.unrouteAll({ behavior: 'ignoreErrors' });
  expect(faults).toEqual([]);
});
