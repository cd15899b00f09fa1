import type { Page } from 'playwright-core';

/** A tablet of some years ago is about four times slower than the machine this was written on. */
export const slowdown = 4;

/** Slows a page. Its workers go on at full speed: Chromium gives no way to slow them ("only supported for pages, not workers"). */
export const slow = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
};
