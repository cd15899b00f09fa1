import type { Locator, Page } from 'playwright-core';

/** Works the app with the keyboard alone: Tab to a control, then the key that acts on it. */
export class Keys {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** Goes on with Tab until the control has the focus; round the page once at most. */
  async reach(control: Locator): Promise<void> {
    await control.waitFor();
    for (let pressed = 0; pressed < 150; pressed += 1) {
      if (await control.evaluate((el) => el === document.activeElement)) return;
      await this.page.keyboard.press('Tab');
    }
    throw new Error(`Tab does not come to ${control}.`);
  }

  async press(control: Locator, key = 'Enter'): Promise<void> {
    await this.reach(control);
    await this.page.keyboard.press(key);
  }

  async type(field: Locator, text: string): Promise<void> {
    await this.reach(field);
    await this.page.keyboard.press('Control+a');
    await this.page.keyboard.type(text);
  }

  /** Tab comes to a group of radio buttons once; the arrows go on inside it. */
  async choose(radio: Locator): Promise<void> {
    const group = await radio.getAttribute('name');
    const inGroup = () =>
      this.page.evaluate((name) => (document.activeElement as HTMLInputElement | null)?.name === name, group);
    for (let pressed = 0; pressed < 150 && !(await inGroup()); pressed += 1) await this.page.keyboard.press('Tab');
    await this.page.keyboard.press('Space');
    for (let pressed = 0; pressed < 20 && !(await radio.isChecked()); pressed += 1)
      await this.page.keyboard.press('ArrowDown');
  }
}
