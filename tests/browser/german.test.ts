import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { inGerman } from '../../src/demo/inGerman';
import { reasonsOfCondition } from '../../src/words/de/reasonsOfCondition';
import { sculptures } from '../../src/words/de/sculptures';
import { namesOfTrade } from '../../src/words/de/trade';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { showScreen } from './showScreen';
import { watch } from './watch';

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

const nameOf = (kind: string): string => String(namesOfTrade.kinds?.[kind]?.name);
const sees = (page: Page, text: string | RegExp) =>
  page.locator('main').getByText(text).filter({ visible: true }).first().waitFor();

test('begun in German, the app speaks German without a network: screens, names of the trade and sentences', async () => {
  await tablet.context.addInitScript(() => {
    if (location.protocol !== 'about:') localStorage.setItem('patina-round.settings', '{"tongue":"de-DE"}');
  });
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
  await page.getByRole('button', { name: sculptures.welcome.demo }).click();
  await page.getByRole('link', { name: new RegExp(String(inGerman['Half-Tide Stair'])) }).waitFor();

  await host.stop();
  await page.reload();
  await page.getByRole('heading', { level: 1, name: sculptures.title }).waitFor();
  await sees(page, String(namesOfTrade.classes?.CC2?.name));

  await showScreen(page, { name: 'next steps', hash: '#/next-steps' });
  // A finding by its name within a sentence worked out from the record, in German quotation marks.
  await sees(page, reasonsOfCondition['class: kind is urgent']({ kind: () => `„${nameOf('pits-new')}“` } as never));
  await showScreen(page, { name: 'method', hash: '#/method' });
  await sees(page, nameOf('even-green-film'));
  await sees(page, String(namesOfTrade.kinds?.['hard-water-scale']?.why));
  expect(await page.locator('main').textContent()).not.toMatch(/Even green film|Hard-water scale/);
  // And what the people of the garden wrote.
  await showScreen(page, { name: 'decisions', hash: '#/decisions' });
  await sees(page, new RegExp(String(inGerman['Leave the geese alone'])));
  expect(await page.locator('main').textContent()).not.toMatch(/Stair|Fluke|wax only/);
  expect(faults).toEqual([]);
});
