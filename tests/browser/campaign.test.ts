import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Entry, idPart } from '../../src/engine/record';
import { campaignStepOf, treatmentOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { carryIn, fileOf, openApp, stillAtWork } from './app';
import { startTablet, type Tablet } from './chromium';
import { gardenFile } from './screensOfGarden';
import { type Host, startHost } from './server';
import { choose } from './still';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

/** The invented garden as somebody's own collection, whose days go on: the demo stands still on its day. */
const garden = (() => {
  const { collection, entries } = gardenFile();
  const own = (e: Entry): Entry => {
    const { invented: _, ...body } = e.body;
    return e.kind === 'collection' ? { ...e, body } : e;
  };
  return { collection, entries: entries.map(own) };
})();
const last = (kind: string, fits: (body: Entry['body']) => boolean): Entry => {
  const found = garden.entries.filter((e) => e.kind === kind && fits(e.body)).at(-1);
  if (!found) throw new Error(`The garden has no such ${kind}.`);
  return found;
};
const stair = last('sculpture', (body) => body.number === 'SW-02').thing;
const campaign = last('campaign', (body) => body.sculpture === stair).thing;
const fund = last('fund', (body) => body.sculpture === stair).thing;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  await tablet.context.clock.install({ time: new Date('2026-10-15T09:00:00Z') });
  page = await openApp(tablet, host);
  await carryIn(page, fileOf(garden));
  await host.stop();
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const to = async (hash: string, title: string | RegExp): Promise<void> => {
  await page.evaluate((at) => {
    location.hash = at;
  }, hash);
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
};
const button = (name: string | RegExp, within: Page | Locator = page) =>
  within.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
const sheet = (name: string | RegExp) => page.getByRole('dialog', { name });
const keep = async (dialog: Locator, name: string): Promise<void> => {
  await button(name, dialog).click();
  await dialog.waitFor({ state: 'hidden' }).catch(async () => {
    throw new Error(`Not kept: ${await dialog.textContent()}`);
  });
};
/** The clock goes on to the morning of a day, and the page is opened again as on that morning. */
const on = async (day: string): Promise<void> => {
  await tablet.context.clock.setSystemTime(new Date(`${day}T09:00:00Z`));
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await stillAtWork(page);
};
const spaced = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');
/** The figures of one row of a table, cell by cell, as they are read from the page. */
const cells = async (table: Locator, start: RegExp): Promise<string[]> => {
  const row = table.getByRole('row', { name: start }).first();
  await row.getByRole('cell').first().waitFor();
  return (await row.getByRole('cell').allTextContents()).map(spaced);
};
const units = (amount: string): number => Number(/[\d,]+/.exec(amount)?.[0].replaceAll(',', ''));
const work = idPart(stair);
const file = `#/campaign/${idPart(campaign)}`;
const stepNamed = (id: string): string => campaignStepOf(id)?.name ?? id;

const addEntry = async (type: string, day: string): Promise<void> => {
  await to(`#/sculpture/${work}/logbook`, w.logbook.title);
  await button(w.logbook.add).click();
  const dialog = sheet(w.logbook.add);
  await choose(dialog.getByRole('radio', { name: treatmentOf(type)?.name ?? type, exact: true }));
  await dialog.getByLabel(w.logbook.day, { exact: true }).fill(day);
  await keep(dialog, w.logbook.save);
};

/** A look at every zone: all clear, but for the one named. */
const lookRound = async (green?: string): Promise<void> => {
  await to(`#/sculpture/${work}/look`, w.look.title);
  for (const letter of 'ABCDEFGHI') {
    const answer = letter === green ? w.look.green : w.look.clear;
    const touch = button(`Zone ${letter}: ${answer}`);
    await touch.click();
    await expect.poll(() => touch.getAttribute('aria-pressed')).toBe('true');
  }
};

test('the pending campaign goes from its trigger to the watch of twelve months, without a network, and its sums are read from the page', async () => {
  // The trigger: a tripwire of the decision went; it is answered.
  await page.getByRole('navigation').getByRole('link', { name: w.shell.nav.plan, exact: true }).click();
  await page.getByText(w.decisions.metTitle('1')).waitFor();
  await to(`#/decisions/${work}`, w.decisions.title);
  await button(/^Answer: /).click();
  const answer = sheet(w.decisions.sheet.title);
  await choose(answer.getByRole('radio', { name: 'Keep to it', exact: false }));
  await answer.getByLabel(w.decisions.sheet.by).fill('Steward');
  await keep(answer, w.decisions.sheet.save);
  await expect.poll(() => page.getByText(w.decisions.metTitle('1')).count()).toBe(0);

  // Three ways at three per cent, as practice prints them to the unit, and what it costs to wait.
  await to(`#/sculpture/${work}/options`, w.options.title);
  const side = page.getByRole('table', { name: /good month at three rates/ });
  const asSet = side.getByRole('row').filter({ hasText: '3 %' });
  const read = async () => (await asSet.allTextContents()).map(spaced);
  const amounts = async () =>
    (await read()).map((text) => [...text.matchAll(/demo \$ ([\d,]+)/g)].map((m) => m[1]).slice(1));
  await expect.poll(amounts).toEqual([
    ['4,442', '1,481'],
    ['7,585', '1,084'],
    ['7,361', '736'],
  ]);
  const waiting = page.getByRole('table', { name: /What it costs to wait/ });
  await expect.poll(async () => (await cells(waiting, /^1 year/))[0]).toContain('67,908');
  await expect.poll(async () => (await cells(waiting, /^3 years/))[0]).toContain('73,449');

  // The fund: what is needed, and the three columns that are never one sum. Two gifts come.
  await to(`#/fund/${idPart(fund)}`, String(last('fund', () => true).body.title));
  const inHand = page.getByRole('region', { name: w.funds.state['in hand'] });
  const sums = async () => (await cells(page.getByRole('table').first(), /^All together/)).map(units);
  await expect.poll(sums).toEqual([65_296, 66_808, 15_000, 16_000, 29_000]);
  await page.getByText('demo $ 42,400', { exact: false }).waitFor();
  await button(w.funds.addGift).first().click();
  const gift = sheet(w.funds.giftSheet.add);
  await gift.getByLabel(w.funds.giftSheet.who).fill('A friend of the quay');
  await gift.getByLabel(w.funds.giftSheet.amount).fill('52 000');
  await choose(gift.getByRole('radio', { name: w.funds.state['in hand'] }));
  await gift.getByLabel(w.funds.giftSheet.received).fill('2026-10-14');
  await keep(gift, w.funds.giftSheet.save);
  await expect.poll(async () => units(spaced(await inHand.textContent()))).toBe(67_000);
  // What is in hand pays for all of it now; no promise or hope has anything left to add.
  await expect.poll(async () => (await sums()).slice(1, 3)).toEqual([66_808, 66_808]);
  await page.getByText(w.funds.metNow, { exact: true }).first().waitFor();

  // Causes first: the last one at work is dealt with.
  const title = String(last('campaign', (body) => body.sculpture === stair).body.title);
  await to(file, title);
  const still = page.getByText('still at work on zone H', { exact: false });
  await still.first().waitFor();
  await to(`#/sculpture/${work}/campaigns`, w.campaign.title);
  await button(/^Spray of a basin/).click();
  const cause = sheet(w.campaign.causes.edit);
  await choose(cause.getByRole('radio', { name: w.campaign.causes.states.removed, exact: true }));
  await cause.getByLabel(w.campaign.causes.changed).fill('2026-10-15');
  await keep(cause, w.campaign.causes.save);

  // Bids side by side: the sums of each, and the one that is taken.
  await to(`${file}/bids`, w.campaign.bids.title);
  const prices = page.getByRole('table').first();
  const priced = (row: RegExp) => async () => (await cells(prices, row)).map(units);
  await expect.poll(priced(/^Total of its priced/)).toEqual([46_000, 44_900, 49_300]);
  await expect.poll(priced(/^On the 8 lines of 9/)).toEqual([42_100, 44_900, 45_000]);
  await button(/^Mark as taken: Foundry/).click();
  await page.getByText(w.campaign.bids.isTaken, { exact: true }).first().waitFor();

  // From money to the record before, step by step.
  for (const step of ['request', 'access', 'inserts', 'before', 'strip']) {
    await to(file, title);
    await button(new RegExp(`(${stepNamed(step)})$`)).click();
    await page.getByRole('heading', { level: 2, name: stepNamed(step), exact: true }).waitFor();
  }

  // A sample area is seen and signed for.
  await on('2027-05-10');
  await to(`${file}/approvals`, w.campaign.approvals.title);
  await button(w.campaign.approvals.addShort).click();
  const approval = sheet(w.campaign.approvals.sheet.add);
  await approval.getByLabel(w.campaign.approvals.sheet.words).fill('A hand wide on zone D: tool marks stand.');
  await choose(approval.getByRole('radio', { name: w.campaign.approvals.answers.yes, exact: true }));
  await button(/signature/i, approval).click();
  await approval.getByLabel(/Role/).last().fill('Conservator');
  await keep(approval, w.campaign.approvals.sheet.save);

  // Layers: one written down, and the next zone as the one before.
  await to(`${file}/layers`, w.layers.title);
  await button(w.layers.writeOf('A')).click();
  const layer = sheet(/layer 1/);
  await layer.getByLabel(w.layers.solution, { exact: true }).fill('Ferric nitrate, as the foundry said');
  await keep(layer, w.layers.save);
  await button(/ame as zone A/)
    .first()
    .click();
  await page.getByText(w.layers.takenOver('A'), { exact: false }).first().waitFor();

  // The treatment is written into the logbook, and the campaign ends with its warranty.
  await on('2027-06-21');
  await addEntry('strip', '2027-06-10');
  await addEntry('repatination', '2027-06-18');
  await addEntry('hot wax', '2027-06-20');
  await to(file, title);
  await button(w.campaign.overview.change).click();
  const facts = sheet(w.campaign.sheet.edit);
  await facts.getByLabel(w.campaign.sheet.ended).fill('2027-06-20');
  await facts.getByLabel(w.campaign.sheet.warrantyUntil).fill('2030-06-20');
  await facts.getByLabel(w.campaign.sheet.warrantyWho).fill('Foundry of the quay (invented)');
  await keep(facts, w.campaign.sheet.save);

  // The watch: looks after 1, 3 and 6 months, and the one of twelve is due on its day.
  for (const day of ['2027-07-20', '2027-09-20', '2027-12-20']) {
    await on(day);
    await lookRound();
  }
  await on('2028-06-20');
  await to('#/due', w.due.title);
  // The figures of a work are worked out anew after each look; its watch is due once they are.
  const watched = page.getByRole('listitem').filter({ hasText: w.due.sort.watch });
  await watched.filter({ hasText: 'SW-02' }).first().waitFor({ timeout: 60_000 });
  await to(file, title);
  const marks = page.getByRole('table', { name: w.due.watch.plan });
  const seen = async (months: number) => (await cells(marks, new RegExp(`^${w.due.watch.months(months)}`)))[1];
  await expect.poll(() => seen(1)).toBe(w.due.watch.state.done('20 July 2027'));
  await expect.poll(() => seen(3)).toBe(w.due.watch.state.done('20 September 2027'));
  await expect.poll(() => seen(6)).toBe(w.due.watch.state.done('20 December 2027'));
  await expect.poll(() => seen(12)).toBe(w.due.watch.state.due('20 June 2028'));

  // The look of twelve months: the green is back in one zone, within the warranty, and is told beside how long it held.
  await lookRound('H');
  await to(file, title);
  await expect.poll(() => seen(12)).toBe(w.due.watch.state.done('20 June 2028'));
  const held = page.getByRole('table', { name: w.due.watch.held });
  await held.waitFor({ timeout: 60_000 });
  await expect.poll(async () => (await cells(held, /^Zone H/))[0], { timeout: 60_000 }).toContain('6 to 12');
  await expect.poll(async () => (await cells(held, /^Zone A/))[0]).toContain(w.due.watch.monthsHeld('12', ''));
  await page.getByText(/Green seen again on .*H.* 20 June 2028/).waitFor();
  expect(faults).toEqual([]);
}, 480_000);
