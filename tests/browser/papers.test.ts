import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PaperSort } from '../../src/papers/layout';
import { w } from '../../src/words';
import { longestOfEach, onePaperOfEach } from '../files/papersOfGarden';
import { openApp, tabletUpright } from './app';
import { axeFaults } from './axe';
import { startTablet, type Tablet } from './chromium';
import { chooseSheet, printed, type SheetSize, saidOnPaper, sheetPoints, showPaper } from './paperPages';
import { type Host, startHost } from './server';
import { watch } from './watch';

const papers = onePaperOfEach();
const named = papers.map((paper) => ({ ...paper, name: paper.sort.id }));
let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  // A browser that lets nobody pick a place for a file: it is downloaded.
  await tablet.context.addInitScript(() => Reflect.deleteProperty(globalThis, 'showSaveFilePicker'));
  page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

/** Sheets of a PDF and the size of the first, in points: as Chromium writes them, in plain view. */
const sheetsOf = (pdf: Buffer): { many: number; size: readonly number[] } => {
  const boxes = [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
  return { many: boxes.length, size: boxes[0]?.slice(1, 3).map(Number) ?? [] };
};

/** By all rules of axe, or by the one alone that hangs on the theme as well as on the size. */
/** How many sheets the paper that is shown takes, and that they are of the size asked for. */
async function pagesOn(size: SheetSize): Promise<number> {
  await chooseSheet(page, size);
  const pdf = sheetsOf(await printed(page));
  const [width, height] = sheetPoints[size];
  const sides = [Math.min(...pdf.size), Math.max(...pdf.size)];
  expect(Math.abs(sides[0]! - width)).toBeLessThan(1.5);
  expect(Math.abs(sides[1]! - height)).toBeLessThan(1.5);
  return pdf.many;
}

const withinPages = async ({ pages }: PaperSort): Promise<void> => {
  for (const size of ['A4', 'Letter'] as const) {
    const many = await pagesOn(size);
    expect(many, `${size}: from ${pages.join(' to ')} pages`).toBeGreaterThanOrEqual(pages[0]);
    expect(many, `${size}: from ${pages.join(' to ')} pages`).toBeLessThanOrEqual(pages[1]);
  }
};

const inTheme = async (theme: 'light' | 'sun') => {
  await page.evaluate((to) => document.documentElement.setAttribute('data-theme', to), theme);
};

test('the demo has something for every kind of paper', () => {
  expect(papers.length).toBeGreaterThanOrEqual(12);
});

test.each(named)(
  '$name keeps to its pages on A4 and Letter, and can be read by anyone in both themes',
  async (paper) => {
    const { sort, hash } = paper;
    await page.setViewportSize(tabletUpright);
    await showPaper(page, hash);
    await withinPages(sort);
    const found: string[] = [];
    for (const theme of ['light', 'sun'] as const) {
      await inTheme(theme);
      for (const viewport of [tabletUpright, { width: 390, height: 844 }]) {
        await page.setViewportSize(viewport);
        const wrong = await axeFaults(page, theme === 'sun');
        found.push(...wrong.map((fault) => `${theme}, ${viewport.width}: ${fault}`));
      }
    }
    await inTheme('light');
    await page.setViewportSize(tabletUpright);
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
  },
);

test.each(longestOfEach().map((paper) => ({ ...paper, name: paper.sort.id })))(
  '$name keeps to its pages where it has most to say: $label',
  async ({ sort, hash }) => {
    await page.setViewportSize(tabletUpright);
    await showPaper(page, hash);
    await withinPages(sort);
    const cards = await page.locator('.paper-card-sheet').count();
    // A sheet of pencil cards is one page, or its head would be missing over the rest.
    if (cards > 0) expect(await pagesOn('Letter')).toBe(1 + cards);
  },
);

test.each(named)(
  '$name saved as a file says the same with scripts off, and can be read by anyone',
  async ({ hash }) => {
    await page.setViewportSize(tabletUpright);
    await showPaper(page, hash);
    const here = await saidOnPaper(page);
    const [handed] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: w.paperHub.save, exact: true }).click(),
    ]);
    const path = await handed.path();
    const other = await tablet.context.newPage();
    try {
      const session = await tablet.context.newCDPSession(other);
      const asked: string[] = [];
      other.on('request', (request) => asked.push(request.url()));
      // Under a name of its own: a browser takes a file without an ending for plain text.
      await other.route('http://paper.test/', (route) =>
        route.fulfill({ contentType: 'text/html; charset=utf-8', body: readFileSync(path, 'utf8') }),
      );
      await session.send('Emulation.setScriptExecutionDisabled', { value: true });
      await other.goto('http://paper.test/');
      expect((await saidOnPaper(other)).whole).toBe(here.whole);
      expect(asked.filter((url) => !url.startsWith('data:'))).toEqual(['http://paper.test/']);
      const drawn = await other.evaluate(() => [...document.images].map((one) => one.naturalWidth > 0));
      expect(drawn).not.toContain(false);
      await session.send('Emulation.setScriptExecutionDisabled', { value: false });
      expect(await axeFaults(other)).toEqual([]);
    } finally {
      await other.close();
    }
  },
);

test('the foot of a printed list names the state of the record; that of a screen that is no paper does not', async () => {
  const footOf = async (hash: string, title: string) => {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
    if (hash === '#/packing') await page.locator('data.record-state').waitFor({ state: 'attached' });
    return page.evaluate(() => {
      dispatchEvent(new Event('beforeprint'));
      const css = document.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules].map(({ cssText }) => cssText));
      dispatchEvent(new Event('afterprint'));
      return css.join('\n');
    });
  };
  const word = w.paperLayout.state('');
  expect(await footOf('#/packing', w.year.packing.title)).toContain(word);
  const settings = await footOf('#/settings', w.settings.title);
  expect(settings).toContain(w.settings.title);
  expect(settings).not.toContain(word);
});
