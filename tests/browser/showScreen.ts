import type { Page } from 'playwright-core';
import type { Screen } from './screensOfGarden';

/** The screen and all it reads are there: its title, or '' where it has none. */
export async function settled(page: Page): Promise<string> {
  const title = page.getByRole('heading', { level: 1 }).first();
  await title.waitFor({ timeout: 5000 }).catch(() => undefined);
  await page.waitForFunction(() => document.querySelector('.reading') === null);
  return (await title.isVisible()) ? ((await title.textContent()) ?? '') : '';
}

/** Goes to a screen, touches what leads to the part of it that is meant, and waits for it: its title. */
export async function showScreen(page: Page, { hash, touch = [], sheet }: Screen): Promise<string> {
  if (await page.getByRole('dialog').isVisible()) await page.keyboard.press('Escape');
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.waitForFunction((to) => location.hash === to, hash);
  await page.waitForTimeout(50);
  const title = await settled(page);
  for (const name of touch) {
    const button = page
      .getByRole('button', { name, exact: true, pressed: false })
      .or(page.getByRole('button', { name, exact: true }))
      .or(page.getByRole('radio', { name }));
    if (await button.first().isVisible()) await button.first().click();
    await page.waitForTimeout(100);
  }
  // A sheet's own code may come at the touch.
  if (sheet)
    await page
      .getByRole('dialog')
      .waitFor({ timeout: 5000 })
      .catch(() => undefined);
  return title;
}
