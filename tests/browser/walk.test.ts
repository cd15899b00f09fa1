import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { grainyJpeg } from '../files/pictures';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { type Host, startHost } from './server';
import { standing } from './still';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const rows = (page: Page): Locator => page.locator('.look-zone');
const answer = (row: Locator, result: 'clear' | 'green' | 'unsure'): Locator =>
  row.getByRole('button', { name: new RegExp(`: ${w.look[result]}$`) });
const pressed = (row: Locator, result: 'clear' | 'green'): Promise<string | null> =>
  answer(row, result).getAttribute('aria-pressed');

/** On the walk, with the list told by the holds: it is not waited for by the hand, but by the count. */
const onTheWalk = async (page: Page): Promise<void> => {
  await page.goto(`${host.url}#/walk`);
  await page.getByRole('heading', { level: 1, name: w.walk.title }).waitFor();
  await rows(page).first().waitFor();
  // As due days are worked out they set the order: what is touched stands still first.
  await standing(page, () => rows(page).allTextContents());
};

test('a walk without a network: clear in one touch, green with its photo in three and the camera’s own, undone in one', async () => {
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  await host.stop();
  await onTheWalk(page);
  const hand = new Hand();

  const first = rows(page).first();
  expect(await hand.counted(() => hand.touch(answer(first, 'clear')))).toBeLessThanOrEqual(2);
  await expect.poll(() => pressed(first, 'clear')).toBe('true');

  const second = rows(page).nth(1);
  const green = await hand.counted(async () => {
    await hand.touch(answer(second, 'green'));
    const take = second.getByRole('button', { name: new RegExp(`^${w.round.photo.take}`) });
    const [asked] = await Promise.all([page.waitForEvent('filechooser'), hand.touch(take)]);
    // Shutter and "use it" are the camera's: two touches at most.
    hand.touches += 2;
    await asked.setFiles({ name: 'IMG.jpg', mimeType: 'image/jpeg', buffer: await grainyJpeg(800, 600) });
    await second.getByText(w.look.photoCount(1)).waitFor();
  });
  expect(green).toBeLessThanOrEqual(4);
  process.stdout.write(`  clear 1 touch, green with photo ${green} (two of them the camera's own)\n`);
  await page.getByText(w.walk.ended(1)).waitFor();

  const undo = await hand.counted(() => hand.touch(page.getByRole('button', { name: /^Undo/ }).first()));
  expect(undo).toBe(1);
  await expect.poll(() => second.getByText(w.look.photoCount(1)).count()).toBe(0);
  await expect.poll(() => pressed(second, 'green')).toBe('true');
  expect(faults).toEqual([]);
});

test('killed in the middle of a walk, it goes on where it was', async () => {
  const page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  await onTheWalk(page);
  await page.getByRole('button', { name: w.walk.settingChange, exact: true }).click();
  await page.getByRole('radio', { name: w.look.wetName.damp, exact: true }).click();
  await page.getByRole('button', { name: w.walk.settingDone, exact: true }).click();
  await answer(rows(page).first(), 'clear').click();
  await expect.poll(() => pressed(rows(page).first(), 'clear')).toBe('true');
  await tablet.kill();

  tablet = await startTablet({ profile: tablet.profile });
  const faults = await watch(tablet.context, host.url);
  const again = await openApp(tablet, host);
  // The garden is opened anew by the same touch; what was done in it stands.
  await again.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await again.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  await onTheWalk(again);
  await again.getByText(w.walk.setting(w.look.wetName.damp, w.look.planned)).waitFor();
  await expect.poll(() => pressed(rows(again).first(), 'clear')).toBe('true');
  await again
    .getByText(/^1 zone looked at, /)
    .first()
    .waitFor();
  expect(faults).toEqual([]);
});
