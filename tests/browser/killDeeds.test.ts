import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Entry } from '../../src/engine/record';
import { asZipped, bagged, hashOf, payloadOf, picture } from '../files/bags';
import { seeded } from '../files/seeded';
import { zipOf } from '../files/zipped';
import { startTablet, type Tablet } from './chromium';
import type { Lying, Planned } from './lifeInPage';
import { built, type Host, startHost } from './server';

const kills = Number(process.env.KILLS ?? 30);
/** A profile grows with each life, and each life looks through all of it. */
const livesOfOne = 20;
const code = 'life-code.js';

let folder: string;
let host: Host;
let tablet: Tablet | undefined;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'patina-round-lives-'));
  cpSync(built, folder, { recursive: true });
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    // As in a build: the workers lie beside the page. Vitest says otherwise.
    define: { 'import.meta.env.DEV': 'false' },
    build: {
      lib: { entry: 'tests/browser/lifeInPage.ts', formats: ['es'], fileName: () => code },
      rolldownOptions: { output: { codeSplitting: false } },
      outDir: folder,
      emptyOutDir: false,
      minify: false,
    },
  });
  host = await startHost({ folder });
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** A work and photos of it, as another tablet carried them out. */
const bagFor = (collection: string, draw: ReturnType<typeof seeded>): string => {
  const within = `sculpture/${draw.id(Date.now())}`;
  const photos = Array.from({ length: 2 + draw.below(5) }, () =>
    picture(draw.below(2 ** 30), 5_000 + draw.below(80_000)),
  );
  const frame = { within, v: 1, at: '2026-10-14T10:00:00.000+00:00', by: '', device: 'elsewhere', replaces: [] };
  const entry = (thing: string, kind: string, body: Entry['body'], n: number): Entry =>
    ({
      ...frame,
      id: draw.id(Date.now()),
      thing,
      kind,
      n: Date.now() * 100 + n,
      deed: draw.id(Date.now()),
      body,
    }) as Entry;
  const entries = [
    entry(within, 'sculpture', { number: 'B', title: 'In a bag', materials: 'bronze' }, 0),
    ...photos.map((bytes, i) => {
      const sha256 = hashOf(bytes);
      const body = { sculpture: within, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' };
      return entry(`photo/${sha256}`, 'photo', body, i + 1);
    }),
  ];
  const zip = zipOf(asZipped(bagged(payloadOf(collection, entries, photos)), 'bag/'));
  return Buffer.from(zip).toString('base64');
};

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A page of the app's own address without the app, which holds the deeds. */
const pageOf = async (on: Tablet): Promise<Page> => {
  const page = await on.context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(`${host.url}icon-192.png`);
  return page;
};

/** As text: what Vitest makes of an import in a function is not for a page. */
const inPage = <T>(page: Page, call: string): Promise<T> =>
  page.evaluate(`import('./${code}').then((code) => code.${call})`);

/** What must be there: everything that was told to be stored. */
interface There {
  entries: Set<string>;
  photos: Set<string>;
  touches: number;
  settled: number;
}

interface Known extends There {
  imports: Map<string, Planned>;
}

const nothingYet = (): Known => ({ entries: new Set(), photos: new Set(), touches: 0, settled: 0, imports: new Map() });

const after = (known: Known, plan: Planned): Known => {
  const changed = (was: ReadonlySet<string>, adds: readonly string[], removes: readonly string[]) => {
    const now = new Set([...was, ...adds]);
    for (const each of removes) now.delete(each);
    return now;
  };
  return {
    entries: changed(known.entries, plan.adds, plan.removes),
    photos: changed(known.photos, plan.photosAdded, plan.photosRemoved),
    touches: known.touches + plan.touches,
    settled: known.settled + plan.settled,
    imports: known.imports,
  };
};

const same = (a: There, b: There): boolean =>
  a.touches === b.touches &&
  a.settled === b.settled &&
  a.entries.size === b.entries.size &&
  a.photos.size === b.photos.size &&
  [...a.entries].every((id) => b.entries.has(id)) &&
  [...a.photos].every((name) => b.photos.has(name));

/** What is there that was not told of, and the other way round. */
const between = (told: There, there: There): string => {
  const apart = (a: ReadonlySet<string>, b: ReadonlySet<string>) => [...a].filter((name) => !b.has(name)).length;
  return [
    `entries +${apart(there.entries, told.entries)} -${apart(told.entries, there.entries)}`,
    `photos +${apart(there.photos, told.photos)} -${apart(told.photos, there.photos)}`,
    `touches ${told.touches} to ${there.touches}, settled ${told.settled} to ${there.settled}`,
  ].join(', ');
};

/** One life: deeds until it is taken, at any moment or close after a call to the store was announced. Gives what was under way. */
async function livedAndKilled(known: Known, seed: number, draw: ReturnType<typeof seeded>) {
  tablet ??= await startTablet();
  const page = await pageOf(tablet);
  let acknowledged = known;
  let stored = 0;
  let underWay: Planned | undefined;
  let announced = 0;
  /** A bag was handed over, and its entries are not stored yet: its photos may be coming. */
  let bagComing = false;
  let bags = 0;
  let went = '';
  const aimedAt = draw.below(4) > 0 ? 1 + draw.below(40) : Number.POSITIVE_INFINITY;
  let aimed: () => void = () => undefined;
  const inAim = new Promise<void>((resolve) => {
    aimed = resolve;
  });
  await page.exposeFunction('planned', (plan: Planned) => {
    underWay = plan;
    if (plan.arrived) known.imports.set(plan.arrived, plan);
    if (plan.photosAdded.length > 0 && plan.arrived) {
      bagComing = false;
      bags += 1;
    }
    announced += 1;
    if (announced === aimedAt) aimed();
  });
  await page.exposeFunction('addedBy', (deed: string) => known.imports.get(deed) ?? { adds: [], photosAdded: [] });
  await page.exposeFunction('bagFor', (collection: string) => {
    bagComing = true;
    return bagFor(collection, draw);
  });
  await page.exposeFunction('stored', (n: number) => {
    if (underWay?.n !== n) return;
    acknowledged = after(acknowledged, underWay);
    underWay = undefined;
    stored += 1;
  });
  const life = inPage(page, `live(${seed})`).catch((error: Error) => {
    went = error.message;
  });
  if (aimedAt === Number.POSITIVE_INFINITY) await pause(100 + draw.below(1500));
  else {
    await Promise.race([inAim, life, pause(20_000)]);
    // Most calls take some ten milliseconds, the largest imports some hundred.
    await pause(draw.next() * (draw.below(4) > 0 ? 25 : 250));
  }
  const ended = went;
  const comingNow = bagComing;
  const { profile } = tablet;
  await tablet.kill();
  await life;
  tablet = await startTablet({ profile });
  return { acknowledged, underWay: underWay as Planned | undefined, stored, bags, bagComing: comingNow, ended };
}

test(`the browser is killed at ${kills} random moments of deeds of every sort: what was told as stored is there, and of what was under way all or nothing`, {
  retry: 0,
  timeout: 90_000 + kills * 20_000,
}, async () => {
  const seed = Number(process.env.KILL_SEED ?? Date.now() % 1_000_000);
  const draw = seeded(seed);
  process.stdout.write(`  KILL_SEED=${seed}\n`);
  const sums = { kills: 0, stored: 0, whole: 0, none: 0, lost: 0, half: 0, orphans: 0, bags: 0, cleared: 0 };
  const within: Record<string, number> = {};
  const harms: string[] = [];
  /** A tablet of its own is due before its time. */
  let renew = false;
  let known = nothingYet();
  for (; sums.kills < kills; sums.kills += 1) {
    if (renew || sums.kills % livesOfOne === 0) {
      renew = false;
      await tablet?.close();
      tablet = undefined;
      known = nothingYet();
    }
    const life = await livedAndKilled(known, draw.below(2 ** 31), draw);
    const page = await pageOf(tablet!);
    const found = await inPage<Lying>(page, 'lying()').catch((error: Error) => error);
    if (found instanceof Error) {
      // The browser itself may find its files unsound after a kill and clear them ("Creating DB since it was missing", says its log).
      // What the app owes then is to say so, with how much was there: never to open as if it were new.
      const told = Number(/data removed \{"count":(\d+)\}/.exec(found.message)?.[1] ?? 0);
      if (told > 0) sums.cleared += 1;
      else harms.push(`kill ${sums.kills + 1}: the store does not open: ${found.message.split('\n')[0]}`);
      renew = true;
      continue;
    }
    await page.close();
    const there = { ...found, entries: new Set(found.entries), photos: new Set(found.photos) };
    const whole = life.underWay && after(life.acknowledged, life.underWay);
    const isWhole = whole !== undefined && same(there, whole);
    const isNone = same(there, life.acknowledged);
    const goes = new Set([...(life.underWay?.removes ?? []), ...(life.underWay?.photosRemoved ?? [])]);
    const missing = [...life.acknowledged.entries, ...life.acknowledged.photos].filter(
      (name) => !goes.has(name) && !there.entries.has(name) && !there.photos.has(name),
    );
    sums.stored += life.stored;
    sums.bags += life.bags;
    sums.orphans = Math.max(sums.orphans, found.orphans.length);
    if (missing.length > 0) sums.lost += missing.length;
    if (isWhole && !isNone) sums.whole += 1;
    else if (isNone) sums.none += 1;
    else sums.half += 1;
    if (life.bagComing) within['a bag coming'] = (within['a bag coming'] ?? 0) + 1;
    else if (life.underWay) within[life.underWay.call] = (within[life.underWay.call] ?? 0) + 1;
    const where = `kill ${sums.kills + 1}, within ${life.underWay?.call ?? 'nothing'}`;
    if (life.ended) harms.push(`${where}: a deed failed before the kill: ${life.ended}`);
    if (missing.length > 0) harms.push(`${where}: ${missing.length} lost`);
    if (!isWhole && !isNone) harms.push(`${where}: half of it is there: ${between(life.acknowledged, there)}`);
    const came = new Set([...known.imports.values()].flatMap(({ photosAdded }) => photosAdded));
    const unspoken = found.orphans.filter((name) => came.has(name)).length;
    if (unspoken > 0) harms.push(`${where}: ${unspoken} photos of a bag, and nothing speaks of them`);
    harms.push(...found.faults.map((fault) => `${where}: ${fault}`));
    if (isWhole) known = whole;
    else known = isNone ? life.acknowledged : { ...there, imports: known.imports };
    if ((sums.kills + 1) % 25 === 0)
      process.stdout.write(`  ${JSON.stringify({ ...sums, kills: sums.kills + 1, within, harms })}\n`);
  }
  process.stdout.write(
    `  ${sums.kills} kills in ${sums.stored} stored calls, ${sums.bags} bags: ${sums.lost} lost, ${sums.half} half written; under way when killed ${JSON.stringify(within)}: ${sums.whole} were there whole, the others not at all; at most ${sums.orphans} photos nothing speaks of; ${sums.cleared} times the browser had cleared its own files, and the app said so\n`,
  );
  expect(harms).toEqual([]);
  // Seen once in some sixty kills where a new browser started at once; more would be a fault of ours.
  expect(sums.cleared).toBeLessThanOrEqual(Math.max(2, Math.ceil(kills / 15)));
  expect(sums.stored).toBeGreaterThan(kills);
});
