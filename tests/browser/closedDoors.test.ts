import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../src/engine/record';
import { w } from '../../src/words';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { gardenFile, screensOfGarden } from './screensOfGarden';
import { type Host, startHost } from './server';
import { goToHash, showScreen } from './showScreen';
import { watch } from './watch';

/** Fields a person writes freely in. Where a number or the name of a thing stands, no file with markup in it is let in. */
const free: Readonly<Record<string, readonly string[]>> = {
  access: ['text'],
  agreedColour: ['name', 'by'],
  collection: ['name'],
  elevation: ['side'],
  insert: ['material', 'note'],
  interpretation: ['by', 'statement'],
  name: ['name'],
  place: ['text'],
  reading: ['instrument', 'calibration'],
  sculpture: ['title', 'maker', 'materials', 'dimensions', 'note'],
  sentinel: ['find'],
  station: ['aim'],
  surveyor: ['role'],
  treatment: ['by', 'note', 'product'],
  zone: ['name', 'note'],
};
const markup = '<img src=x onerror="taken=1"><script>taken=1</script>';

let host: Host;
let tablet: Tablet | undefined;
let page: Page;
let faults: string[];
const folder = mkdtempSync(join(tmpdir(), 'patina-round-log-'));
const log = join(folder, 'net.json');
const garden = gardenFile();

/** The garden as a real collection, with markup in every field that is written in freely. */
const hostile = (): Entry[] =>
  garden.entries.map((entry) => {
    const { invented: _, ...body } = entry.body;
    const said = (free[entry.kind] ?? []).filter((key) => typeof body[key] === 'string');
    return {
      ...entry,
      body: { ...body, ...Object.fromEntries(said.map((key) => [key, `${markup} ${body[key]}`.slice(0, 100)])) },
    };
  });

beforeAll(async () => {
  host = await startHost();
  // The browser's own log: of every request it made, by pages, workers and itself.
  tablet = await startTablet({ flags: [`--log-net-log=${log}`, '--net-log-capture-mode=Default'] });
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await carryIn(page, fileOf({ collection: garden.collection, entries: hostile() }));
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** What stands in the page that only text turned into markup could have put there. */
const inThePage = () =>
  page.evaluate(() => {
    const found = [
      ...document.querySelectorAll('script:not([src]), style, iframe, object, embed, base, form[action], [target]'),
      ...[...document.querySelectorAll('*')].filter((e) => [...e.attributes].some(({ name }) => /^on/i.test(name))),
      ...[...document.querySelectorAll('a[href]')].filter((a) => !/^(?:#|blob:)/.test(a.getAttribute('href') ?? '')),
      ...[...document.querySelectorAll('img')].filter((img) => !img.src.startsWith('blob:')),
    ].map((e) => e.outerHTML.slice(0, 120));
    const asText = document.body.textContent?.includes('<img src=x onerror') === true;
    return { found, taken: 'taken' in globalThis, asText };
  });

test('with markup in every field, each screen shows text, and none of it runs or becomes part of the page', async () => {
  const screens = screensOfGarden(garden.entries).filter(({ name }) => name !== 'no such screen');
  const broken: string[] = [];
  let shown = 0;
  for (const screen of screens) {
    const { name } = screen;
    await showScreen(page, screen);
    const { found, taken, asText } = await inThePage();
    if (found.length > 0 || taken) broken.push(`${name}: ${taken ? 'ran' : ''} ${found.join(' ')}`);
    if (asText) shown++;
  }
  expect(broken).toEqual([]);
  // It was there to be shown: as text.
  expect(shown).toBeGreaterThan(15);
  expect(faults).toEqual([]);
});

test('a drawing that can hold a program is no picture, whatever it is called', async () => {
  const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>globalThis.taken=1</script></svg>');
  const photos = screensOfGarden(garden.entries).find(({ name }) => name === 'photos')!;
  await goToHash(page, photos.hash);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  const input = page.locator('input[type=file][multiple]').first();
  await input.setInputFiles([
    { name: 'plan.svg', mimeType: 'image/svg+xml', buffer: svg },
    { name: 'plan.jpg', mimeType: 'image/jpeg', buffer: svg },
  ]);
  await expect.poll(() => page.getByText(/“plan\.(svg|jpg)” is an SVG drawing/).count()).toBeGreaterThan(0);
  expect((await inThePage()).taken).toBe(false);
});

test('nothing is said of where the page was, and a page that opened ours has no hold on it', async () => {
  expect(await page.evaluate(() => document.querySelector<HTMLMetaElement>('meta[name=referrer]')?.content)).toBe(
    'no-referrer',
  );
  const answer = await fetch(host.url);
  expect(answer.headers.get('referrer-policy')).toBe('no-referrer');
  expect(answer.headers.get('cross-origin-opener-policy')).toBe('same-origin');
  expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
});

describe('with the browser closed', () => {
  beforeAll(async () => {
    await goTo(page, 'sculptures');
    await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
    await tablet?.close();
    tablet = undefined;
  });

  test('the browser’s own log has no request but to our host that a page, a worker or the service worker began', async () => {
    const { constants, events } = JSON.parse(readFileSync(log, 'utf8')) as {
      constants: { logEventTypes: Record<string, number> };
      events: { type: number; params?: { url?: string; initiator?: string } }[];
    };
    const start = constants.logEventTypes.URL_REQUEST_START_JOB;
    const asked = events.flatMap(({ type, params }) => (type === start && params?.url ? [params] : []));
    // What the browser asks for itself, of its maker, no page began.
    const begun = asked.filter(({ initiator }) => initiator !== undefined && initiator !== 'not an origin');
    const ours = new URL(host.url).origin;
    const others = begun.filter(({ url }) => new URL(url!).origin !== ours && !url!.startsWith(`blob:${ours}/`));
    expect(begun.length).toBeGreaterThan(50);
    expect(others).toEqual([]);
  });
});
