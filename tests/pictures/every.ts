import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { w } from '../../src/words';
import { gardenFile, type Screen, screensOfGarden, screensOfPad, workToWalk } from '../browser/screensOfGarden';
import { settled, showScreen } from '../browser/showScreen';
import { startRound } from '../browser/walkRound';

const sizes = [
  [820, 1180],
  [1180, 820],
  [390, 844],
  [1366, 1024],
] as const;

/** Every screen of the garden in four sizes, and contact sheets of each size. Ways: "sun", and the way of writing ("de-DE"). */
export const takeEvery = async (page: Page, folder: string, ways: readonly string[]): Promise<void> => {
  const theme = ways.includes('sun') ? 'sun' : 'light';
  const tongue = ways.find((way) => way.includes('-'));
  const garden = gardenFile();
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
  const work = workToWalk(garden.entries);
  await startRound(page, work, true);
  const pad = screensOfPad(/round\/([^/]+)/.exec(page.url())![1]!, work.zones);
  if (tongue) {
    await page.evaluate((to) => localStorage.setItem('patina-round.settings', JSON.stringify({ tongue: to })), tongue);
    await page.reload();
    await settled(page);
  }
  // In another language the names of buttons are others: only what an address shows is taken then.
  const screens = [...screensOfGarden(garden.entries), ...pad].filter(({ touch }) => !tongue || !touch);
  await page.evaluate((to) => document.documentElement.setAttribute('data-theme', to), theme);
  for (const [width, height] of sizes) {
    const into = join(folder, `${width}x${height}`);
    mkdirSync(into, { recursive: true });
    await page.setViewportSize({ width, height });
    const taken: string[] = [];
    for (const screen of screens) {
      await showScreen(page, screen);
      await page.waitForTimeout(200);
      taken.push(join(into, `${fileName(screen)}.png`));
      await page.screenshot({ path: taken.at(-1)! });
    }
    await laySideBySide(taken, { width, height }, folder);
  }
};

const fileName = ({ name }: Screen): string => name.replaceAll(/[^a-z0-9]+/gi, '-').toLowerCase();

/** Small enough to see at a glance what stands out, twelve to a sheet. */
async function laySideBySide(files: readonly string[], size: { width: number; height: number }, folder: string) {
  const across = size.width > size.height ? 3 : 6;
  const perSheet = 12;
  const width = size.width > size.height ? 560 : 300;
  const height = Math.round((width * size.height) / size.width);
  for (let first = 0; first < files.length; first += perSheet) {
    const here = files.slice(first, first + perSheet);
    const pieces = await Promise.all(
      here.map(async (file, i) => ({
        input: await sharp(file).resize(width, height).toBuffer(),
        left: (i % across) * (width + 8),
        top: Math.floor(i / across) * (height + 8),
      })),
    );
    const rows = Math.ceil(here.length / across);
    const ground = { width: across * (width + 8), height: rows * (height + 8), channels: 3 as const };
    const number = String(first / perSheet + 1).padStart(2, '0');
    await sharp({ create: { ...ground, background: '#777777' } })
      .composite(pieces)
      .png()
      .toFile(join(folder, `sheet-${size.width}x${size.height}-${number}.png`));
  }
}
