import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { writeSurvey } from '../../src/engine/exchange';
import type { Entry } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Tablet } from './chromium';
import type { Host } from './server';
import { choose } from './still';

export const tabletUpright = { width: 820, height: 1180 };

/** The app on a page of its own, kept by the worker from here on: it would open again with the host gone. */
export async function openApp(tablet: Tablet, host: Pick<Host, 'url'>, hash = ''): Promise<Page> {
  const page = await tablet.context.newPage();
  page.setDefaultTimeout(40_000);
  await page.setViewportSize(tabletUpright);
  await page.goto(host.url + hash);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

export const goTo = async (page: Page, place: keyof typeof w.shell.nav): Promise<void> => {
  const navigation = page.getByRole('navigation', { name: w.shell.nav.label });
  await navigation.getByRole('link', { name: w.shell.nav[place], exact: true }).click();
};

/** Opens a survey file on the screen Carry and takes it in. */
export async function carryIn(page: Page, bytes: Uint8Array): Promise<void> {
  await goTo(page, 'carry');
  const button = page.getByRole('button', { name: w.carry.open, exact: true }).filter({ hasText: w.carry.open });
  const [asked] = await Promise.all([page.waitForEvent('filechooser'), button.click()]);
  await asked.setFiles({ name: 'garden.survey.json', mimeType: 'application/json', buffer: Buffer.from(bytes) });
  await accept(page);
}

/** The same for a file on the disk that is too large to be handed over in a message. */
export async function carryInLarge(page: Page, path: string): Promise<void> {
  await goTo(page, 'carry');
  await page.locator('input[type=file]').waitFor({ state: 'attached' });
  const session = await page.context().newCDPSession(page);
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector: 'input[type=file]' });
  await session.send('DOM.setFileInputFiles', { files: [resolve(path)], nodeId });
  await accept(page);
}

async function accept(page: Page): Promise<void> {
  await page.getByRole('button', { name: w.carry.accept, exact: true }).click();
  await page.getByRole('button', { name: w.carry.undo, exact: true }).waitFor();
}

export const fileOf = ({ collection, entries }: { collection: string; entries: readonly Entry[] }): Uint8Array =>
  writeSurvey(collection, entries);

/** Prepares the whole survey on the screen Carry, without photos or as a bag with them, and downloads it: where the file lies. */
export async function carriedOut(page: Page, make: 'survey' | 'bag'): Promise<string> {
  await goTo(page, 'carry');
  await choose(page.getByRole('radio', { name: w.carry.makes[make] }));
  await page.getByRole('button', { name: w.carry.prepares[make], exact: true }).click();
  const download = page.getByRole('button', { name: w.carry.download, exact: true });
  const [handed] = await Promise.all([page.waitForEvent('download'), download.click()]);
  return handed.path();
}

export const carryOut = async (page: Page): Promise<Buffer> => readFileSync(await carriedOut(page, 'survey'));

/** After the clock was set on by half an hour or more: the touch that wakes the tablet asks who is at work, and the person there stays. */
export async function stillAtWork(page: Page): Promise<void> {
  const asked = page.getByRole('dialog', { name: w.field.who.title });
  await expect
    .poll(async () => {
      await page.keyboard.press('Shift');
      return asked.isVisible();
    })
    .toBe(true);
  await asked
    .getByRole('button', { name: /^(?:Still )?(?:Steward|Helper|Stand-in)/ })
    .first()
    .click();
  await asked.waitFor({ state: 'detached' });
}
