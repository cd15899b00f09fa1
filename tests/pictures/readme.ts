import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { w } from '../../src/words';

const settled = (page: Page) => page.waitForTimeout(900);
const placeOf = (page: Page) => page.evaluate(() => location.hash.slice(1));
const goTo = async (page: Page, place: string) => {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, place);
  await settled(page);
};

/** The README's pictures: a work with a stop word, a campaign, and a round begun at zone A. */
export const takeReadme = async (page: Page): Promise<void> => {
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
  for (const name of ['Dry', 'Before washing', 'Steward']) await page.getByRole('radio', { name, exact: true }).check();
  await page.getByRole('button', { name: /^Start the round/ }).click();
  await page.getByRole('button', { name: 'about 20 %', exact: true }).waitFor();
  const places = {
    sculptures: '/',
    'then-and-now': `${stair}/then-and-now`,
    'zone-map': `${stair}/map`,
    compare: `${stair}/compare`,
    zone: await placeOf(page),
    'next-steps': '/next-steps',
    plan: '/plan',
    campaign,
  };
  for (const [name, place] of Object.entries(places)) {
    await goTo(page, place);
    await page.screenshot({ path: join('tests', 'pictures', `${name}.png`) });
  }
};
