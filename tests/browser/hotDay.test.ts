import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { idPart, nameOf } from '../../src/engine/record';
import { w } from '../../src/words';
import { bodies, collection, first, sculpture, uuid, zoneA } from '../files/entries';
import { carryIn, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { measure } from './measure';
import { type Host, startHost } from './server';
import { choose } from './still';
import { watch } from './watch';

const words = w.hotWork;
const campaign = nameOf.campaign(uuid(40));
const insert = nameOf.insert(uuid(8));
const lens = 'Cast glass, lens L2 (zone A)';

/** A work with one lens, whose limit its conservator set, and a campaign under way. */
const survey = {
  collection,
  entries: [
    first(1, collection, 'collection', { name: 'Invented garden' }, { within: collection }),
    first(2, sculpture, 'sculpture', bodies.sculpture),
    first(3, zoneA, 'zone', bodies.zone()),
    first(4, insert, 'insert', { sculpture, zone: zoneA, material: 'Cast glass, lens L2', count: 1, removable: 'no' }),
    first(5, nameOf.insertCare(insert), 'insertCare', {
      ...{ sculpture, insert, most: 60, mostDifference: 40, method: 'shield' },
      ...{ limitBy: { role: 'Glass conservator' }, limitDate: '2026-05-01' },
    }),
    first(6, campaign, 'campaign', { sculpture, title: 'Strip and colour', opened: '2026-01-10', step: 'trigger' }),
  ],
};

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  // Both clocks of the page, the one on the wall and the steady one, turn as the test says.
  await tablet.context.clock.install({ time: new Date('2026-06-03T12:00:00Z') });
  page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const button = (name: string) => page.getByRole('button', { name, exact: true });
/** The close is refused for this reason; what was said at an earlier try stands until then. */
const refusedClose = async (why: string): Promise<void> => {
  await button(words.close.act).click();
  await page.getByRole('alert').filter({ hasText: why }).last().waitFor();
};
const minutesLeft = async (): Promise<number> =>
  Number.parseInt((await page.getByRole('timer').textContent()) ?? '', 10);

/** What cannot be read or hit on the page as it stands. */
const faultsToHit = () => measure(page, { control: 48, main: 48, apart: 0 });

/** The card of the day, made on the screen. */
const makeCard = async (): Promise<void> => {
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    `#/campaign/${idPart(campaign)}/hot-work`,
  );
  await button(words.add).click();
  const sheet = page.getByRole('dialog', { name: words.add });
  await sheet.getByLabel(words.card.permit).fill('HW-12, harbour fire office');
  await sheet.getByLabel(words.card.role(words.card.authorised)).fill('Fire office');
  await sheet.getByLabel(words.card.role(words.card.watcher)).fill('Helper');
  await sheet.getByRole('button', { name: words.card.save }).click();
  await page.getByRole('link', { name: /3 June 2026/ }).click();
  await page.getByRole('heading', { level: 1, name: words.dayTitle('3 June 2026') }).waitFor();
};

test('a day of hot work is not closed before its watch has really ended, through a restart and a clock set forward, and not before the insert is photographed', async () => {
  await makeCard();
  const touch = (by: string) => button(words.readings.change(by, lens)).click();
  await touch('+10');
  await button(words.readings.writeOf('30', lens)).click();
  await page.getByText(words.readings.highest('30', '12:00')).waitFor();

  expect(await faultsToHit()).toEqual([]);
  await refusedClose('The work is not said to be over');
  await button(words.watch.end).click();
  await page.getByRole('timer').waitFor({ state: 'attached' });
  await expect.poll(minutesLeft).toBe(60);
  await refusedClose('has not given their word');

  await tablet.context.clock.fastForward('20:00');
  await expect.poll(minutesLeft).toBe(40);
  // A restart: the count goes on where it was, but for the moment the app was shut.
  await page.reload();
  await page.getByRole('timer').waitFor({ state: 'attached' });
  await expect.poll(minutesLeft).toBeGreaterThanOrEqual(40);
  expect(await minutesLeft()).toBeLessThanOrEqual(41);

  // The clock on the wall is set an hour and a half forward: by it the watch would be long over.
  await tablet.context.clock.setSystemTime(new Date('2026-06-03T13:50:00Z'));
  await page.getByText(words.watch.doubtWhat).waitFor();
  await refusedClose('has not given their word');
  await button(words.watch.say).click();
  await expect.poll(() => page.getByText(w.hotWork.watch.timeWrong).count()).toBe(2);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await faultsToHit()).toEqual([]);

  await tablet.context.clock.fastForward('41:00');
  await page.getByText(words.watch.overWhat('60')).waitFor();
  await button(words.watch.say).click();
  await page.getByText(/Kept to its end: 6\d min, the word of Helper/).waitFor();

  await refusedClose(`${lens} has no photo after the heat.`);
  const glass = { width: 320, height: 240, channels: 3, background: { r: 150, g: 180, b: 190 } } as const;
  const buffer = await sharp({ create: glass }).jpeg().toBuffer();
  const photo = { name: 'after.jpg', mimeType: 'image/jpeg', buffer };
  await page
    .getByLabel(w.round.photo.chooseOf(words.after.photos(lens)))
    .last()
    .setInputFiles(photo);
  await page.getByRole('img', { name: w.parts.photosHere.alt(words.after.photos(lens), 1) }).waitFor();
  await choose(page.getByRole('radio', { name: words.after.states.unchanged }));
  await page.getByText(words.close.nothing).waitFor();
  await button(words.close.act).click();
  await page.getByText(/^Closed at .* by Helper\.$/).waitFor();

  await page.reload();
  await page.getByText(/^Closed at .* by Helper\.$/).waitFor();
  expect(await button(words.close.act).count()).toBe(0);
  expect(await page.getByRole('timer').count()).toBe(0);
  expect(faults).toEqual([]);
});
