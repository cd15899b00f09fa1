import type { Locator } from 'playwright-core';

/** The finger on the glass: every touch a test makes goes through it and is counted. */
export class Hand {
  touches = 0;

  async touch(control: Locator): Promise<void> {
    await control.click();
    this.touches += 1;
  }

  /** What the touches of a stretch were, apart from those before it. */
  async counted(stretch: () => Promise<void>): Promise<number> {
    const before = this.touches;
    await stretch();
    return this.touches - before;
  }
}
