import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cardSize } from '../../src/screens/stations/cardSize';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type SheetDrawn, sheetsOf } from './pdfDrawing';
import { type Host, startHost } from './server';
import { choose } from './still';

const words = w.stations.cards;

let host: Host;
let tablet: Tablet;
let page: Page;

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  page = await openApp(tablet, host, '#/welcome');
  await page.getByRole('button', { name: w.sculptures.welcome.demo }).click();
  await page.getByText('Half-Tide Stair').first().waitFor();
});
afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

const printed = async (paper: 'A4' | 'Letter'): Promise<SheetDrawn[]> => {
  await page.evaluate(() => {
    location.hash = '/cards';
  });
  await choose(page.getByRole('radio', { name: words.papers[paper], exact: true }));
  await page
    .getByRole('img', { name: /^Card: SW-06/ })
    .last()
    .waitFor();
  return sheetsOf(Buffer.from(await page.pdf({ preferCSSPageSize: true })));
};

/** Bars of ten centimetres: black, one millimetre high, far longer than anything else that is. */
const barsOn = (sheet: SheetDrawn) =>
  sheet.filled.filter(
    ({ fill, height, width }) => fill.every((part) => part === 0) && Math.abs(height - 1) < 0.1 && width > 50,
  );

const paperSize = { A4: [210, 297], Letter: [215.9, 279.4] } as const;

describe('Cards on paper', () => {
  it.each([
    ['A4', 'a tablet', 820, 1180, '100%'],
    ['Letter', 'a tablet', 820, 1180, '100%'],
    ['A4', 'a phone', 390, 844, '100%'],
    ['Letter', 'a desk and text twice as large', 1440, 900, '200%'],
  ] as const)(
    'have a bar of 100 mm to half a millimetre: %s, printed from %s',
    async (paper, _, width, height, text) => {
      await page.setViewportSize({ width, height });
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, text);
      const sheets = await printed(paper);
      const cards = await page.getByRole('img', { name: /^Card: / }).count();
      expect(sheets.length).toBe(Math.ceil(cards / 2));
      const bars = sheets.flatMap((sheet) => barsOn(sheet));
      // Three long lines to a card.
      expect(bars.length).toBe(cards * 3);
      for (const bar of bars) expect(Math.abs(bar.width - 100)).toBeLessThanOrEqual(0.5);
    },
  );

  it.each(['A4', 'Letter'] as const)(
    'lie whole on a sheet of %s, clear of the edge no printer reaches',
    async (paper) => {
      const [width, height] = paperSize[paper];
      for (const sheet of await printed(paper)) {
        expect(Math.abs(sheet.width - width)).toBeLessThan(0.5);
        expect(Math.abs(sheet.height - height)).toBeLessThan(0.5);
        const grounds = sheet.filled.filter((each) => Math.abs(each.width - cardSize.width) < 0.5);
        expect(grounds.length).toBeGreaterThan(0);
        for (const card of grounds) {
          expect(Math.abs(card.height - cardSize.height)).toBeLessThan(0.5);
          expect(card.x).toBeGreaterThan(6);
          expect(card.x + card.width).toBeLessThan(width - 6);
          expect(card.y).toBeGreaterThan(6);
          expect(card.y + card.height).toBeLessThan(height - 6);
        }
      }
    },
  );
});
