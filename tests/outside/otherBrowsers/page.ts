import type { Driver, Handle } from './driver';

export type Role = 'button' | 'link' | 'radio' | 'checkbox' | 'heading' | 'listitem' | 'dialog' | 'file';

/** Seconds a thing may take to come. */
const patience = 60;

/**
 * The first thing of that role with that name that is shown. Names after "Accessible Name and Description Computation 1.2" as far as this
 * app needs it: aria-labelledby, aria-label, the label of an input, the text.
 */
const byName = `
  const [role, source, flags] = arguments;
  const tags = { button: 'button', link: 'a[href]', radio: 'input[type=radio]', checkbox: 'input[type=checkbox]',
    heading: 'h1,h2,h3', listitem: 'li', dialog: 'dialog[open],[role=dialog]',
    file: 'input[type=file]' };
  if (role === 'file') return document.querySelector(tags.file);
  const text = (el) => (el.textContent ?? '').replace(/\\s+/g, ' ').trim();
  const named = (el) => {
    const by = (el.getAttribute('aria-labelledby') ?? '').split(' ').map((id) => document.getElementById(id)).filter(Boolean);
    if (by.length > 0) return by.map(text).join(' ');
    return el.getAttribute('aria-label') ?? (el.labels?.length ? [...el.labels].map(text).join(' ') : text(el));
  };
  const wanted = new RegExp(source, flags);
  const dialog = document.querySelector('dialog[open]');
  const all = [...(dialog ?? document).querySelectorAll(tags[role])].filter((el) => el.checkVisibility() && wanted.test(named(el)));
  const it = all.find((el) => !el.disabled);
  if (!it) return null;
  const hit = it.labels?.[0] ?? it;
  hit.scrollIntoView({ block: 'center', behavior: 'instant' });
  const place = () => {
    const { left, top, width, height } = hit.getBoundingClientRect();
    const on = document.elementFromPoint(left + width / 2, top + height / 2);
    return on && (hit.contains(on) || on.contains(hit)) ? [left, top, width, height].join() : undefined;
  };
  let equal = 0;
  let tries = 0;
  for (let before = place(); equal < 4; ) {
    await new Promise((done) => setTimeout(done, 30));
    const now = place();
    equal = now !== undefined && now === before ? equal + 1 : 0;
    if (now === undefined && (tries += 1) > 20) return null;
    before = now;
  }
  window.landed = undefined;
  const note = (e) => (window.landed = hit.contains(e.target));
  document.addEventListener('click', note, { capture: true, once: true });
  return hit;`;

const escaped = (name: string): string => `^${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`;
const source = (name: string | RegExp): string => (typeof name === 'string' ? escaped(name) : name.source);

/** A page of the app as a person meets it: by what things are and what they are called. */
export class OtherPage {
  readonly driver: Driver;

  constructor(driver: Driver) {
    this.driver = driver;
  }

  async find(role: Role, name: string | RegExp): Promise<Handle> {
    return this.until(`a ${role} called ${name}`, () => this.driver.find(byName, role, source(name), ''));
  }

  async isThere(role: Role, name: string | RegExp): Promise<boolean> {
    return (await this.driver.find(byName, role, source(name), '')) !== undefined;
  }

  async touch(role: Role, name: string | RegExp): Promise<void> {
    // A page on a busy machine may move between the look and the touch. A hand that missed touches again.
    for (let tries = 1; tries <= 3; tries += 1) {
      const missed = await this.touchOnce(role, name);
      if (missed === undefined) return;
      if (tries === 3) throw new Error(`${this.driver.name}: the ${role} ${name} was missed three times: ${missed}`);
    }
  }

  /** Touches what may go by itself meanwhile: false where it is not there, and no word where the touch came too late. */
  async touchIfThere(role: Role, name: string | RegExp): Promise<boolean> {
    const found = await this.driver.find(byName, role, source(name), '');
    if (found !== undefined) await this.driver.click(found).catch(() => undefined);
    return found !== undefined;
  }

  /** Undefined where the touch came down on it, else what happened. */
  private async touchOnce(role: Role, name: string | RegExp): Promise<string | undefined> {
    const found = await this.find(role, name);
    const refused = await this.driver.click(found).then(() => undefined, String);
    if (refused) return refused;
    for (let tries = 0; tries < 40; tries += 1) {
      const landed = await this.driver.ask<boolean | null>('return window.landed ?? null;');
      if (landed !== null) return landed ? undefined : 'it came down beside it';
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return 'nothing was touched';
  }

  /** Waits for words to be shown. */
  async reads(words: string): Promise<void> {
    await this.until(`the words “${words}”`, async () => {
      const shown = await this.driver.ask<boolean>(
        "return document.body.innerText.replace(/\\s+/g, ' ').includes(arguments[0]);",
        words.replace(/\s+/g, ' '),
      );
      return shown || undefined;
    });
  }

  /** Waits until nothing on the page moves: a list is in its order, and stays so for a second. */
  async still(): Promise<void> {
    let before = '';
    let same = 0;
    await this.until('a page that stands still', async () => {
      const now = await this.driver.ask<string>(
        "return document.body.innerText + [...document.querySelectorAll('a, button')].map((e) => e.getBoundingClientRect().top).join();",
      );
      same = now === before ? same + 1 : 0;
      before = now;
      return same >= 10 || undefined;
    });
  }

  /** Opens a place of the app, and waits until its title stands. */
  async open(url: string): Promise<void> {
    await this.driver.goTo(url);
    await this.find('heading', /./);
  }

  async until<T>(what: string, look: () => Promise<T | undefined>): Promise<T> {
    const from = Date.now();
    let failed: unknown;
    while (Date.now() - from < patience * 1000) {
      // A page that is just going answers nothing: it is asked again.
      const found = await look().catch((error: unknown) => {
        failed = error;
        return undefined;
      });
      if (found !== undefined) return found;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    const shown = await this.driver
      .ask<string>('return location.href + "\\n" + document.body.innerText;')
      .catch(String);
    throw new Error(
      `${this.driver.name}: ${what} did not come within ${patience} s${failed ? ` (${failed})` : ''}. The page shows:\n${shown.slice(0, 3000)}`,
    );
  }
}
