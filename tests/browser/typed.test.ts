import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { databaseNames } from '../../src/actions/opening';
import { pathTo } from '../../src/screens/shell/paths';
import { w } from '../../src/words';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, carryOut, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { goToHash } from './showScreen';
import { watch } from './watch';

const survey = yearlyRound();
const words = w.paperConservator;
const [first = '', second = ''] = Object.values(words.questions).map(({ ask }) => ask);
const thought = 'Salt from below, drawn up each spring; the joint at the plinth should be opened before the next wax.';

let host: Host;
let tablet: Tablet;

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const form = `#${pathTo.conservatorPage(survey.sculpture)}`;
const box = (page: Page, name: string) => page.getByRole('textbox', { name });
const isBack = (page: Page) => page.getByText(/^Not yet kept: what you typed on .+ is here again\.$/).waitFor();

/** All that lies in the database of what is typed and not kept, as text. */
const heldInPage = (page: Page): Promise<string> =>
  page.evaluate(
    (name) =>
      new Promise<string>((tell, fail) => {
        const opening = indexedDB.open(name);
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const rows = opening.result
            .transaction('meta')
            .objectStore('meta')
            .getAll(IDBKeyRange.bound('typed ', 'typed!'));
          rows.onerror = () => fail(rows.error);
          rows.onsuccess = () => {
            opening.result.close();
            tell(JSON.stringify(rows.result));
          };
        };
      }),
    databaseNames.own,
  );

/** How many letters of the text are missing at the end of what is there; anything else that differs fails. */
async function lettersMissing(page: Page, name: string, typed: string): Promise<number> {
  const there = await box(page, name).inputValue();
  expect(typed.startsWith(there), `“${there}” begins “${typed}”`).toBe(true);
  return typed.length - there.length;
}

test('what was typed into a conservator’s page is there again after the browser was killed, the page loaded anew and the back button, until it is kept', {
  retry: 0,
  timeout: 240_000,
}, async () => {
  host = await startHost();
  tablet = await startTablet();
  let page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  await goToHash(page, form);
  await box(page, words.form.by).fill('Ilka Imagined');
  await box(page, first).pressSequentially(thought);
  await expect.poll(() => heldInPage(page)).toContain(thought);
  await box(page, second).pressSequentially('No steam');
  await tablet.kill();

  tablet = await startTablet({ profile: tablet.profile });
  const faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host, form);
  await isBack(page);
  expect(await box(page, words.form.by).inputValue()).toBe('Ilka Imagined');
  expect(await box(page, first).inputValue()).toBe(thought);
  const killed = await lettersMissing(page, second, 'No steam');
  await box(page, second).fill('No steam, ever');
  await page.reload();
  await isBack(page);
  const reloaded = await lettersMissing(page, second, 'No steam, ever');
  process.stdout.write(
    `  letters missing: ${killed} after a kill on the last letter, ${reloaded} after a reload on it\n`,
  );
  await box(page, second).fill('No steam, ever');

  await goToHash(page, '#/');
  await page.goBack();
  await isBack(page);
  expect(await box(page, second).inputValue()).toBe('No steam, ever');

  await page.getByRole('button', { name: words.form.keep }).click();
  await expect.poll(() => box(page, first).inputValue()).toBe('');
  await page.reload();
  await box(page, first).waitFor();
  await expect.poll(() => heldInPage(page)).toBe('[]');
  expect(await box(page, first).inputValue()).toBe('');
  expect(await page.getByText(/^Not yet kept/).count()).toBe(0);
  await goToHash(page, '#/');
  const file = (await carryOut(page)).toString();
  expect(file).toContain(thought);
  expect(faults).toEqual([]);
});

test('what is typed and not kept leaves in no file', { timeout: 120_000 }, async () => {
  host = await startHost();
  tablet = await startTablet();
  const page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  await goToHash(page, form);
  await box(page, first).fill(thought);
  await goToHash(page, '#/');
  expect((await carryOut(page)).toString()).not.toContain(thought);
  await goToHash(page, form);
  await isBack(page);
  await page.getByRole('button', { name: w.notKept.discard }).click();
  expect(await box(page, first).inputValue()).toBe('');
  await page.getByRole('button', { name: w.notKept.bringBack }).click();
  expect(await box(page, first).inputValue()).toBe(thought);
});
