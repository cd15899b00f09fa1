/** npm run bench: the lines this app has set itself, measured in the built app at a stated slowdown. */
import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { budgetsOf } from '../../src/build/budgets.mjs';
import { writeSurvey } from '../../src/engine/exchange';
import { carryInLarge, openApp, tabletUpright } from '../browser/app';
import { startTablet } from '../browser/chromium';
import { built, startHost } from '../browser/server';
import { startRound } from '../browser/walkRound';
import { largePhoto } from '../files/largePhoto';
import { big, seededSurvey } from '../files/seededSurvey';
import { linesOfBag } from './bag';
import { type Line, median, percentile, said } from './figures';
import { timeFigures } from './figuresWorkedOut';
import { noteUsable, type Touch, timeRawPuts, timeTouches } from './inPage';
import { linesOfLives } from './lives';
import { linesOfPixels } from './pixels';
import { timePixels } from './pixelsInWorker';
import { linesOfReading } from './reading';
import { slow, slowdown } from './slowed';

const touches = 200;
const starts = 20;
const lines: Line[] = [];

const file = `build/bench-${big.works}-${big.zonesEach}-${big.rounds}-${big.seed}${big.care ? '-care' : ''}.survey.json`;
if (!existsSync(file)) {
  const { collection, entries } = seededSurvey(big);
  mkdirSync('build', { recursive: true });
  writeFileSync(file, writeSurvey(collection, entries));
}

for (const size of budgetsOf(built).sizes) console.log(size);
for (const line of linesOfLives()) console.log(said(line));
for (const line of linesOfReading()) console.log(said(line));
for (const line of await linesOfBag()) console.log(said(line));
const photo = await largePhoto();
for (const line of await linesOfPixels(photo)) console.log(said(line));
const host = await startHost();
let tablet = await startTablet();
try {
  let page = await openApp(tablet, host);
  page.setDefaultTimeout(180_000);
  const began = performance.now();
  await carryInLarge(page, file);
  lines.push({
    what: `survey file of ${big.works * big.zonesEach} zones, ${big.rounds} rounds`,
    measured: statSync(file).size / 1000,
    unit: 'kB',
  });
  lines.push({ what: 'carried in, at full speed', measured: performance.now() - began, unit: 'ms' });

  // The store goes on putting such a file in order for a while, and nobody starts a round from an import: a new start, and rest.
  await tablet.close({ keepProfile: true });
  await new Promise((resolve) => setTimeout(resolve, 15_000));
  tablet = await startTablet({ profile: tablet.profile });
  lines.push(...(await timeFigures(tablet, host)));
  lines.push(...(await timePixels(tablet, host, photo)));
  page = await openApp(tablet, host);

  const timed: Touch[] = [];
  await slow(page);
  let raw: number[] = [];
  for (let at = 1; timed.length < touches; at += 1) {
    const zones = Array.from({ length: big.zonesEach }, (_, i) => String.fromCharCode(65 + i)).map((letter) => ({
      letter,
      name: `Zone ${letter}`,
    }));
    await startRound(page, { title: `Q-${String(at).padStart(2, '0')}`, day: '2027-05-20', zones }, true);
    if (raw.length === 0) {
      // The list behind may still be working out its scores.
      await new Promise((resolve) => setTimeout(resolve, 5000));
      raw = await timeRawPuts(page, touches);
    }
    timed.push(...(await timeTouches(page, touches - timed.length)));
    await page.goto(host.url);
  }
  const all = timed.map(({ ms }) => ms);
  const of = (what: Touch['what']) => timed.filter((t) => t.what === what).map(({ ms }) => ms);
  lines.push({
    what: `raw strict put and a frame, 95 of 100 of ${raw.length}`,
    measured: percentile(raw, 0.95),
    unit: 'ms',
  });
  lines.push({
    what: `touch, saved and drawn, 95 of 100 of ${all.length}`,
    measured: percentile(all, 0.95),
    most: 100,
    unit: 'ms',
  });
  lines.push({
    what: `  of them answers in a zone (${of('answer').length})`,
    measured: percentile(of('answer'), 0.95),
    unit: 'ms',
  });
  lines.push({
    what: `  of them leaving a zone (${of('leave').length})`,
    measured: percentile(of('leave'), 0.95),
    unit: 'ms',
  });
  lines.push({
    what: 'an answer against a raw put, medians',
    measured: median(of('answer')) / median(raw),
    unit: 'times',
  });

  await host.stop();
  const usable: number[] = [];
  for (let start = 0; start < starts; start += 1) {
    await tablet.close({ keepProfile: true });
    tablet = await startTablet({ profile: tablet.profile });
    page = await tablet.context.newPage();
    await page.setViewportSize(tabletUpright);
    await page.addInitScript(noteUsable);
    await slow(page);
    await page.goto(host.url);
    await page.waitForFunction(() => (globalThis as { usable?: number }).usable !== undefined);
    usable.push(await page.evaluate(() => (globalThis as { usable?: number }).usable ?? Number.NaN));
  }
  lines.push({
    what: `cold start without a host, list usable, median of ${starts}`,
    measured: median(usable),
    most: 2000,
    unit: 'ms',
  });
  lines.push({ what: '  slowest of them', measured: Math.max(...usable), unit: 'ms' });
} finally {
  await tablet.close();
  await host.stop();
}
console.log(
  `CPU slowed ${slowdown} times; load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(' ')}`,
);
for (const line of lines) console.log(said(line));
process.exitCode = lines.some(({ measured, most }) => most !== undefined && !(measured <= most)) ? 1 : 0;
