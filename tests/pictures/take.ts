/**
 * The README's pictures, taken from the demo in the built app. `npm run pictures -- FOLDER` takes every screen in four sizes,
 * in the light and the sun theme, into that folder, to be looked at.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { w } from '../../src/words';
import { openApp } from '../browser/app';
import { startTablet } from '../browser/chromium';
import { startHost } from '../browser/server';

const sizes = [
  [820, 1180],
  [1180, 820],
  [390, 844],
  [1440, 900],
] as const;

const settled = (page: Page) => page.waitForTimeout(900);
const placeOf = (page: Page) => page.evaluate(() => location.hash.slice(1));
const goTo = async (page: Page, place: string) => {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, place);
  await settled(page);
};

/** The demo's work with a stop word, a round of it begun at zone A, and the addresses of all screens. */
const walkIn = async (page: Page) => {
  await page.getByRole('button', { name: w.sculptures.welcome.demo }).click();
  await page.getByText('Half-Tide Stair').first().click();
  await settled(page);
  const stair = await placeOf(page);
  await goTo(page, `${stair}/campaigns`);
  await page
    .getByRole('link', { name: /Strip and hot patina/ })
    .first()
    .click();
  await settled(page);
  const campaign = await placeOf(page);
  await goTo(page, '/');
  await page.getByText('Woman Waiting').first().click();
  await settled(page);
  const waiting = await placeOf(page);
  await goTo(page, `${waiting}/round/start`);
  for (const name of ['Dry', 'Before washing', 'Steward'])
    await page.getByRole('radio', { name, exact: true }).check({ force: true });
  await page.getByRole('button', { name: /^Start the round/ }).click();
  await page.getByRole('button', { name: 'about 20 %', exact: true }).waitFor();
  const zone = await placeOf(page);
  const round = zone.slice(0, zone.indexOf('/zone/'));
  return {
    sculptures: '/',
    sculpture: stair,
    edit: `${stair}/edit`,
    zones: `${stair}/zones`,
    'new-zone': `${stair}/zone/new`,
    logbook: `${stair}/logbook`,
    'then-and-now': `${stair}/then-and-now`,
    'over-time': `${waiting}/over-time`,
    agreement: `${stair}/agreement`,
    look: `${waiting}/look`,
    'zone-map': `${stair}/map`,
    stations: `${stair}/stations`,
    shots: `${stair}/shots`,
    cards: `/cards${stair.slice(stair.lastIndexOf('/'))}`,
    photos: `${stair}/photos`,
    compare: `${stair}/compare`,
    colour: `${stair}/colour`,
    'start-round': `${stair}/round/start`,
    round,
    zone,
    'end-of-round': `${round}/end`,
    'next-steps': '/next-steps',
    walk: '/walk',
    holds: '/holds',
    place: '/place',
    'eye-check': '/eye-check',
    plan: '/plan',
    due: '/due',
    year: '/year',
    'site-plan': '/site-plan',
    budget: '/budget',
    funds: '/funds',
    decisions: '/decisions',
    products: '/products',
    incidents: '/incidents',
    'plan-of-work': `${stair}/plan`,
    options: `${stair}/options`,
    campaigns: `${stair}/campaigns`,
    campaign,
    bids: `${campaign}/bids`,
    quantities: `${campaign}/quantities`,
    layers: `${campaign}/layers`,
    'care-day': `${waiting}/care-day`,
    access: `${stair}/access`,
    carry: '/carry',
    settle: '/carry/settle',
    method: '/method',
    settings: '/settings',
  };
};

const inReadme = ['sculptures', 'zone', 'zone-map', 'compare', 'then-and-now', 'next-steps', 'plan', 'campaign'];

const host = await startHost();
const tablet = await startTablet();
const page = await openApp(tablet, host);
const folder = process.argv[2];
try {
  const places = Object.entries(await walkIn(page));
  if (!folder) {
    for (const [name, place] of places.filter(([name]) => inReadme.includes(name))) {
      await goTo(page, place);
      await page.screenshot({ path: join('tests', 'pictures', `${name}.png`) });
    }
  } else {
    mkdirSync(folder, { recursive: true });
    for (const theme of ['light', 'sun'] as const) {
      await page.evaluate((to) => document.documentElement.setAttribute('data-theme', to), theme);
      for (const [width, height] of sizes) {
        await page.setViewportSize({ width, height });
        for (const [name, place] of places) {
          await goTo(page, place);
          await page.screenshot({ path: join(folder, `${name}-${theme}-${width}.png`) });
        }
      }
    }
    await page.emulateMedia({ media: 'print' });
    for (const [name, place] of places) {
      await goTo(page, place);
      await page.screenshot({ path: join(folder, `${name}-print.png`), fullPage: true });
    }
  }
} finally {
  await tablet.close();
  await host.stop();
}
