import type { Locator, Page } from 'playwright-core';

/** Looks in a row, 30 ms apart, that must find a control at one place: one pair alone falls between two growths of a page. */
const stillLooks = 5;

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a control is on the screen, CSS px, once it no longer moves: a hand does not touch what is still sliding. */
export async function stillBox(control: Locator): Promise<Place> {
  for (let tries = 0; tries < 20; tries += 1) {
    const box = await control.evaluate(async (el, looks) => {
      const look = () => {
        const { x, y, width, height } = el.getBoundingClientRect();
        return { x, y, width, height };
      };
      let before = look();
      let equal = 1;
      for (let all = 0; all < 200 && el.isConnected; all += 1) {
        await new Promise((go) => setTimeout(go, 30));
        const box = look();
        const still = box.x === before.x && box.y === before.y && box.height === before.height;
        equal = still ? equal + 1 : 1;
        if (box.width > 0 && equal >= looks) return box;
        before = box;
      }
      return undefined;
    }, stillLooks);
    // Another may have been put in its place meanwhile.
    if (box) return box;
  }
  throw new Error('It never stood still to be touched.');
}

/** Ticks an option whose tile lies over it, once it stands still: a touch at a place that moved comes down on something else. */
export async function choose(option: Locator): Promise<void> {
  for (let tries = 1; ; tries += 1) {
    await stillBox(option);
    const missed = await option.check({ force: true }).then(
      () => undefined,
      (error: unknown) => error,
    );
    if (!missed || (await option.isChecked())) return;
    if (tries === 3) throw missed;
  }
}

/** What was set off by now is on the screen: two frames were drawn since. */
export const drawn = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((done) => {
        requestAnimationFrame(() => requestAnimationFrame(() => done()));
        // A page behind another one draws nothing.
        setTimeout(done, 300);
      }),
  );

/** What is read, once five looks in a row found the same: a list that still reorders is not touched. */
export async function standing<T>(page: Page, read: () => Promise<T>): Promise<T> {
  let before = await read();
  let equal = 1;
  for (let tries = 0; tries < 300; tries += 1) {
    await page.waitForTimeout(100);
    const now = await read();
    equal = JSON.stringify(now) === JSON.stringify(before) ? equal + 1 : 1;
    if (equal >= stillLooks) return now;
    before = now;
  }
  throw new Error('It never stood still.');
}
