import type { Page } from 'playwright-core';
import type { Screen } from './screensOfGarden';
import { drawn } from './still';

/** A busy machine needs its time: a limit against hanging only. Milliseconds. */
const late = 30_000;

/** The screen and all it reads are there: its title, or '' where it has none. */
export async function settled(page: Page): Promise<string> {
  const title = page.getByRole('heading', { level: 1 }).first();
  await title.waitFor({ timeout: late }).catch(() => undefined);
  await page.waitForFunction(() => document.querySelector('.reading') === null);
  return (await title.isVisible()) ? ((await title.textContent()) ?? '') : '';
}

/** Goes to an address within the app; what was shown before is gone from the page. */
export async function goToHash(page: Page, hash: string): Promise<void> {
  await page.evaluate(async (to) => {
    if (location.hash === to) return;
    await new Promise((gone) => {
      // The app's own listener was there first: it has shown the new place when this one is called.
      addEventListener('hashchange', gone, { once: true });
      location.hash = to;
    });
  }, hash);
  await drawn(page);
}

/** Goes to a screen, touches what leads to the part of it that is meant, and waits for it: its title. */
export async function showScreen(page: Page, { hash, touch = [], sheet }: Screen): Promise<string> {
  const dialog = page.getByRole('dialog');
  if (await dialog.isVisible()) {
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
  }
  await goToHash(page, hash);
  const title = await settled(page);
  let touched = false;
  for (const name of touch) {
    const button = page
      .getByRole('button', { name, exact: true, pressed: false })
      .or(page.getByRole('button', { name, exact: true }))
      .or(page.getByRole('radio', { name }))
      .first();
    // One that is not there has been touched before; one that is still to come has a moment for it.
    if (!(await button.waitFor({ timeout: 1500 }).then(yes, no))) continue;
    await button.click();
    touched = true;
    await drawn(page);
    await page.waitForFunction(() => document.querySelector('.reading') === null);
  }
  // A sheet's own code may come at the touch.
  if (sheet && touched) await dialog.waitFor({ timeout: late }).catch(() => undefined);
  return title;
}

const yes = () => true;
const no = () => false;
