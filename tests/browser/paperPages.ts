import type { Page } from 'playwright-core';
import { w } from '../../src/words';
import { choose } from './still';

export type SheetSize = 'A4' | 'Letter';

/** Width and height of a sheet in points (1/72 inch). ISO 216; ANSI/ASME Y14.1. */
export const sheetPoints: Readonly<Record<SheetSize, readonly [number, number]>> = {
  A4: [595.28, 841.89],
  Letter: [612, 792],
};

/** Opens a paper of the app and waits until all its figures and pictures are there. */
export async function showPaper(page: Page, hash: string): Promise<void> {
  const go = (to: string) =>
    page.evaluate((hash) => {
      location.hash = hash;
    }, to);
  // By way of the list: the paper before must be gone.
  await go('#/papers');
  await page.locator('.paper-sheet').waitFor({ state: 'detached' });
  await go(hash);
  await page.locator('.paper-sheet h1').waitFor();
  await page.getByText(w.paperHub.workingOut).waitFor({ state: 'hidden', timeout: 60_000 });
  await page.waitForFunction(() =>
    [...document.querySelectorAll<HTMLImageElement>('.paper-sheet img')].every((one) => one.complete),
  );
}

export const chooseSheet = (page: Page, size: SheetSize): Promise<void> =>
  choose(page.getByRole('radio', { name: w.stations.cards.papers[size] }));

/** The paper as the browser prints it, on the sheet the paper asks for. */
export const printed = (page: Page): Promise<Buffer> => page.pdf({ preferCSSPageSize: true, printBackground: false });

/** What the paper says, row by row and line by line, as it stands in the page. */
export const saidOnPaper = (page: Page, root = '.paper') =>
  page.evaluate((root) => {
    const text = (el: Element) => (el.textContent ?? '').replace(/\s+/g, ' ').trim();
    const paper = document.querySelector(root);
    const all = (what: string) => [...(paper?.querySelectorAll(what) ?? [])];
    return {
      whole: (paper?.textContent ?? '').replace(/\s+/g, ' ').trim(),
      /** The line that stands at the foot of each page too. */
      foot: all('footer').map(text).join(' '),
      headings: all('h1, h2, h3, h4').map(text),
      rows: all('tbody tr').map((row) => [...row.children].map(text).filter(Boolean)),
    };
  }, root);
