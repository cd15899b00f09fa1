import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { dayOfGarden } from '../../src/actions';
import { type ReckonedWork, reckoned } from '../../src/command/reckoned';
import { type ThenAndNow, thenAndNow } from '../../src/engine/change';
import { levelOf } from '../../src/engine/condition';
import { readSurvey } from '../../src/engine/exchange';
import type { ZoneHolds } from '../../src/engine/hold';
import { idPart, type SculptureRecord } from '../../src/engine/record';
import { trendsOf } from '../../src/engine/trend';
import { date, number, w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { built, type Host, startHost } from './server';
import { goToHash } from './showScreen';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];
/** What the engine itself comes to, from the very file the page opens: nothing below is typed. */
let garden: ReadonlyMap<string, ReckonedWork>;

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  garden = toldOf(dayOfGarden);
}, 300_000);

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

const toldOf = (today: string): ReadonlyMap<string, ReckonedWork> => {
  const survey = readSurvey(gunzipSync(readFileSync(join(built, 'demo', 'demo.survey.bin'))));
  if (!survey.ok) throw new Error('The demo file cannot be read.');
  return new Map(reckoned(survey, today).works.map((work) => [work.record.sculpture.body.number, work]));
};

const told = (work: string): ReckonedWork => {
  const found = garden.get(work);
  if (!found) throw new Error(`The garden has no ${work}.`);
  return found;
};

const open = async (work: string, screen: string, title: string): Promise<void> => {
  const { record } = told(work);
  await goToHash(page, `#/sculpture/${idPart(record.sculpture.thing)}/${screen}`);
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
  // The work that was shown before has gone: the screen is the same one.
  await page.getByRole('main').getByText(record.sculpture.body.title).first().waitFor();
};

const overTime = async (work: string): Promise<void> => {
  await open(work, 'over-time', w.overTime.title);
  await page.getByRole('heading', { level: 2, name: w.overTime.takesOff }).waitFor({ timeout: 60_000 });
};

const pairOf = (record: SculptureRecord, years: readonly [string, string]): ThenAndNow => {
  const round = (year: string): string => {
    const found = record.rounds.find(({ body }) => body.type === 'annual' && body.date.startsWith(year));
    if (!found) throw new Error(`No annual round in ${year}.`);
    return found.thing;
  };
  return thenAndNow(record, round(years[0]), round(years[1]));
};

const verdictWord = ({
  verdict,
  clearly,
}: {
  verdict: ThenAndNow['findings'][number]['verdict'];
  clearly: boolean;
}): string => (clearly ? w.thenAndNow.clearlyVerdict(w.thenAndNow.verdict[verdict]) : w.thenAndNow.verdict[verdict]);

/** The verdict the page shows on the green area. */
const greenShown = async (): Promise<string> => {
  const row = page
    .getByRole('table', { name: w.thenAndNow.activeArea })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: w.thenAndNow.active.green, exact: true }) });
  await row.waitFor();
  return ((await row.locator('.verdict').textContent()) ?? '').trim();
};

const zoneOf = (holds: readonly ZoneHolds[], record: SculptureRecord, letter: string): ZoneHolds => {
  const zone = record.zones.find(({ body }) => body.letter === letter);
  const found = holds.find((row) => row.zone === zone?.thing);
  if (!found) throw new Error(`No holds of zone ${letter}.`);
  return found;
};

test('1 Half-Tide Stair: one year is not sure, six years clearly are', async () => {
  const { record } = told('SW-02');
  const lastYear = pairOf(record, ['2025', '2026']);
  const sixYears = pairOf(record, ['2021', '2026']);
  expect(lastYear.sculpture.active.green.verdict).toBe('no sure change');
  expect(sixYears.sculpture.active.green).toMatchObject({ verdict: 'worse', clearly: true });

  await open(
    'SW-02',
    `then-and-now/${idPart(lastYear.earlier.thing)}/${idPart(lastYear.later.thing)}`,
    w.thenAndNow.title,
  );
  await expect.poll(greenShown).toBe(verdictWord(lastYear.sculpture.active.green));
  const smallest = lastYear.sculpture.active.green.smallest ?? Number.NaN;
  await page.getByText(w.thenAndNow.smallestArea(`${smallest.toFixed(2)} m²`)).waitFor();

  await page.getByRole('radio', { name: w.thenAndNow.sinceFirst }).click();
  await expect.poll(greenShown).toBe(verdictWord(sixYears.sculpture.active.green));
  await page.getByText(/The area of active green rises by .*: a trend over 6 rounds\./).waitFor();
});

test('2 Woman Waiting: the holds of the coat folds drift shorter, and that is not proven', async () => {
  const { record, first } = told('SW-01');
  const folds = zoneOf(first.holds, record, 'D');
  expect(folds.shortening.word).toBe('looks shorter, not proven');
  await overTime('SW-01');
  const card = page.getByRole('article', { name: /^Zone D,/ });
  await card.getByText(`${w.overTime.words['looks shorter, not proven']}.`).waitFor();
  await card.getByRole('button', { name: w.charts.numbers }).click();
  await card.getByRole('table').waitFor();
  const rows = await card.getByRole('table').getByRole('row').allInnerTexts();
  const shown = rows.slice(1).map((row) => row.replaceAll('\t', ' '));
  folds.holds.forEach((hold, i) => {
    expect(shown[i]).toContain(date(hold.start));
    expect(shown[i]).toContain(w.charts.between(number(hold.lower, 1), number(hold.upper ?? 0, 1)));
  });
  expect(folds.holds).toHaveLength(6);
});

test('3 Supper by Five Lenses: the series is broken where the surface became another one', async () => {
  const { record } = told('SW-03');
  const { series, trend } = trendsOf(record).work.index;
  expect(series.breaks.length).toBeGreaterThan(0);
  await overTime('SW-03');
  for (const { date: day } of series.breaks)
    await page
      .getByText(new RegExp(`^${date(day)}: `))
      .first()
      .waitFor();
  const chart = page.getByRole('img', { name: new RegExp(`^${w.overTime.index}: `) });
  const spans = new Set(series.points.map(({ span }) => span)).size;
  await expect.poll(() => chart.locator('path.series-line').count()).toBe(spans);
  expect(trend.word).not.toBe('trend');
  await page.getByText(w.overTime.trend.falling(w.overTime.subject.index, trend.n)).waitFor();
});

test('4 Geese: nothing presses, and the zone nobody looked at is an open cell', async () => {
  const { record, second } = told('SW-04');
  const classes = second.need?.classes;
  if (!classes) throw new Error('The geese were never looked at.');
  expect(levelOf(classes.sculpture, 'urgency')).toBe(0);
  await overTime('SW-04');
  const notLooked = record.visits.filter(({ body }) => body.state === 'not looked');
  expect(notLooked).toHaveLength(1);
  await expect.poll(() => page.getByRole('img', { name: w.overTime.seen['not-looked'] }).count()).toBe(1);
  await page.getByText(w.overTime.trend.none(w.overTime.subject.index, 6)).waitFor();
  await page.goto(`${host.url}#/sculpture/${idPart(record.sculpture.thing)}`);
  await page.getByText('UC0').first().waitFor();
});

test('5 Rope and Patience: a jump that is another pair of eyes is explained, not called a change', async () => {
  const { record } = told('SW-05');
  const toStandIn = pairOf(record, ['2023', '2024']);
  const zone = record.zones.find(({ body }) => body.letter === 'B')?.thing;
  const heads = toStandIn.findings.find((finding) => finding.zone === zone);
  expect(heads?.verdict).toBe('no sure change');
  await open(
    'SW-05',
    `then-and-now/${idPart(toStandIn.earlier.thing)}/${idPart(toStandIn.later.thing)}`,
    w.thenAndNow.title,
  );
  await page
    .getByText(/Two persons looked: Steward then, Stand-in now\./)
    .first()
    .waitFor();
  await page.getByRole('button', { name: /with no sure change in/ }).click();
  const card = page.getByRole('article', { name: /^Zone B/ });
  await card.getByText(w.thenAndNow.verdict['no sure change']).first().waitFor();
  await page.goto(`${host.url}#/sculpture/${idPart(record.sculpture.thing)}/agreement`);
  await page.getByText(w.agreement.pair(date('2023-10-12'), 'Steward', 'Helper')).waitFor();
});

test('6 Sleeping Fluke: before and after the sprinkler was moved', async () => {
  const { record, first } = told('SW-06');
  const face = zoneOf(first.holds, record, 'A');
  expect(face.spans.at(-1)?.causeRemoved).toBe(true);
  const { series } = trendsOf(record).work.scale;
  const before = series.points.filter(({ span }) => span === 0).map(({ figure }) => figure.value);
  const after = series.points.filter(({ span }) => span === 1).map(({ figure }) => figure.value);
  expect(Math.max(...after)).toBeLessThan(Math.min(...before));
  await overTime('SW-06');
  await page
    .getByText(/^11 July 2023: Cause removed/)
    .first()
    .waitFor();
  const card = page.getByRole('article', { name: /^Zone A,/ });
  await card.getByRole('button', { name: w.charts.numbers }).click();
  await card
    .getByText(/Cause removed, 11 July 2023/)
    .first()
    .waitFor();
  await page.goto(`${host.url}#/holds`);
  await page.getByText(w.holds.withAndWithout).first().waitFor({ timeout: 60_000 });
});

test('and nothing on the way was a number that is none, a fault of the page or a call to the network', async () => {
  for (const [work] of garden) {
    await overTime(work);
    expect(await page.locator('body').textContent()).not.toMatch(/\bNaN\b|Infinity|undefined/);
  }
  expect(faults).toEqual([]);
});
