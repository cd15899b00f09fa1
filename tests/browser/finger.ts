import type { CDPSession, Locator, Page } from 'playwright-core';
import { type Place, stillBox } from './still';

/** A finger on the glass that gives touch events and nothing else: no mouse, no keys. Every touch is counted. */
export class Finger {
  touches = 0;

  private readonly page: Page;
  private readonly session: CDPSession;

  private constructor(page: Page, session: CDPSession) {
    this.page = page;
    this.session = session;
  }

  static async on(page: Page): Promise<Finger> {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 1 });
    await page.evaluate(() => {
      const notTouched: string[] = [];
      Object.assign(globalThis, { notTouched });
      document.addEventListener(
        'click',
        (e) => {
          if (e instanceof PointerEvent && e.pointerType !== 'touch') notTouched.push(`${e.pointerType} ${e.target}`);
        },
        true,
      );
    });
    return new Finger(page, session);
  }

  /** Clicks of this page that came of anything but a finger. */
  notTouched(): Promise<string[]> {
    return this.page.evaluate(() => (globalThis as unknown as { notTouched: string[] }).notTouched);
  }

  async touch(control: Locator): Promise<void> {
    await this.touchAt(control, 0.5, 0.5);
  }

  /** A place in a control, in shares of its width and height. */
  async touchAt(control: Locator, x: number, y: number): Promise<void> {
    await control.waitFor();
    await control.scrollIntoViewIfNeeded();
    // A page may still move between the look and the touch. A hand that missed touches again, once; the miss is not counted.
    if (!(await this.touchOnce(control, x, y))) await this.touchOnce(control, x, y);
    this.touches += 1;
  }

  /** Whether the touch came down on the control, where it was free to be touched a moment before. */
  private async touchOnce(control: Locator, x: number, y: number): Promise<boolean> {
    const placeIn = (box: Place) => ({ x: box.x + box.width * x, y: box.y + box.height * y });
    const free = (place: { x: number; y: number }) =>
      control.evaluate((el, { x, y }) => el.contains(document.elementFromPoint(x, y)), place);
    let place = placeIn(await stillBox(control));
    let wasFree = await free(place);
    // Bars that stay at the edges may lie over it.
    if (!wasFree) {
      await control.evaluate((el) => el.scrollIntoView({ block: 'center' }));
      place = placeIn(await stillBox(control));
      wasFree = await free(place);
    }
    await control.evaluate((el) => {
      const note = (e: Event) => Object.assign(globalThis, { landed: el.contains(e.target as Node) });
      document.addEventListener('pointerdown', note, { capture: true, once: true });
    });
    const touchPoints = [place];
    await this.session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
    await this.session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    // A touch that led to another document has landed.
    const landed = await this.page
      .evaluate(() => (globalThis as unknown as { landed?: boolean }).landed)
      .catch(() => undefined);
    return !wasFree || landed !== false;
  }
}
