import type { Locator, Page } from 'playwright-core';
import { kindOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { stepName, type YearlyRound, type YearlyZone } from '../files/yearlyRound';
import { goTo } from './app';
import type { Hand } from './hand';

const words = w.round;
const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });
const nameOfKind = (id: string): string => kindOf(id)?.name ?? id;

export const zoneHeading = (page: Page, { letter, name }: Pick<YearlyZone, 'letter' | 'name'>): Locator =>
  page.getByRole('heading', { level: 1, name: words.zone.title(letter, name), exact: true });

/** From the list of works to the first zone's screen. */
export async function startRound(
  page: Page,
  survey: { title: string; day: string; zones: readonly Pick<YearlyZone, 'letter' | 'name'>[] },
  ownEye: boolean,
): Promise<void> {
  await goTo(page, 'sculptures');
  await page.getByRole('link', { name: new RegExp(survey.title) }).click();
  await page.getByRole('link', { name: w.sculptures.work.startRound, exact: true }).click();
  await page.getByLabel(words.start.date).fill(survey.day);
  await page.getByRole('radio', { name: words.start.wetName.dry, exact: true }).check();
  await page.getByRole('radio', { name: words.start.washedName['before wash'], exact: true }).check();
  await page.getByRole('checkbox', { name: words.start.ownEye }).setChecked(ownEye);
  await page.getByRole('button', { name: /^Start the round/ }).click();
  await zoneHeading(page, survey.zones[0]!).waitFor();
}

/** One touch and what the screen shows once it is kept. */
export interface Step {
  readonly on: Locator;
  readonly shows: Locator;
}

/** What must be touched in a zone for its plan, in order. The last step leaves it. */
export function stepsFor(page: Page, survey: YearlyRound, zone: YearlyZone, ownEye: boolean): readonly Step[] {
  const next = survey.zones[survey.zones.indexOf(zone) + 1];
  const left = next ? zoneHeading(page, next) : page.getByRole('heading', { level: 1, name: words.end.title });
  const goOn = { on: button(page, next ? words.zone.nextTo(next.letter) : words.zone.nextEnd), shows: left };
  if (!ownEye && zone.plan.what === 'unchanged') return [{ on: button(page, words.zone.asLastYear), shows: left }];
  const judged = ownEye ? judgeEach(page, zone) : judgeChanged(page, zone);
  return [...judged, ...seeNew(page, zone), goOn];
}

const ladderOf = (page: Page, zone: YearlyZone, kind: string): Locator =>
  page.getByRole('group', { name: words.ask.extentArea(kind, zone.letter), exact: true });

/** The sentence read back, once it speaks of this kind with this cover, and with this severity where it is given. */
const readBack = (page: Page, kind: string, coverage: number, severity?: string): Locator => {
  const said = [stepName(coverage).replace('about ', ''), ...(severity ? [severity] : [])].join(', ');
  return page.getByRole('status').filter({ hasText: `${nameOfKind(kind).toLowerCase()}, ${said}` });
};

const cover = (page: Page, zone: YearlyZone, kind: string, coverage: number): Step => ({
  on: ladderOf(page, zone, kind).getByRole('button', { name: stepName(coverage), exact: true }),
  shows: readBack(page, kind, coverage),
});

function judgeChanged(page: Page, zone: YearlyZone): Step[] {
  const { plan, earlier } = zone;
  const first = earlier[0];
  if (plan.what !== 'changed' || !first) return [];
  const row = page.getByRole('button', { name: new RegExp(`^${nameOfKind(first.kind)}`) });
  return [{ on: row, shows: ladderOf(page, zone, first.kind) }, cover(page, zone, first.kind, plan.to)];
}

/** Each earlier finding by one's own eye; one that differs is then said to have really changed. */
function judgeEach(page: Page, zone: YearlyZone): Step[] {
  return zone.earlier.flatMap(({ kind, coverage }, i): Step[] => {
    if (zone.plan.what !== 'changed' || i > 0) return [cover(page, zone, kind, coverage)];
    const changed = button(page, words.ask.againstName.changed);
    const after = zone.earlier[1];
    const card = button(page, words.card.takeBack);
    return [
      { ...cover(page, zone, kind, zone.plan.to), shows: changed },
      { on: changed, shows: after ? ladderOf(page, zone, after.kind) : card },
    ];
  });
}

function seeNew(page: Page, zone: YearlyZone): Step[] {
  const { plan } = zone;
  if (plan.what !== 'new') return [];
  const name = nameOfKind(plan.kind);
  const origin = page.getByRole('group', { name: words.ask.origin(plan.kind), exact: true });
  const severity = page.getByRole('group', { name: words.ask.severity(plan.kind), exact: true });
  const covered = cover(page, zone, plan.kind, plan.coverage);
  return [
    {
      on: button(page, words.group[plan.group as keyof typeof words.group]),
      shows: button(page, name),
    },
    { on: button(page, name), shows: origin },
    { on: origin.getByRole('button', { name: /metal/ }), shows: ladderOf(page, zone, plan.kind) },
    { ...covered, shows: severity },
    {
      on: severity.getByRole('button', { name: 'moderate' }),
      shows: readBack(page, plan.kind, plan.coverage, 'moderate'),
    },
  ];
}

/** Makes the touches of a zone, each after the screen showed the one before. */
export async function answerZone(hand: Hand, steps: readonly Step[]): Promise<void> {
  for (const { on, shows } of steps) {
    await hand.touch(on);
    await shows.waitFor();
  }
}

/** Three zones once more, each touch after the screen showed the one before, until the summary stands. */
export const askedAgain = (page: Page, hand: Hand): Promise<void> =>
  untilSummary(page, () => hand.touch(page.getByRole('button', { name: stepName(0.1), exact: true })));

/** The same, with whatever answers what is asked. */
export async function untilSummary(page: Page, answer: () => Promise<void>): Promise<void> {
  const summary = page.getByRole('heading', { name: words.end.missing });
  const again = page.getByRole('heading', { level: 2, name: /^Once more/ });
  for (let asked = 0; asked < 20; asked += 1) {
    await summary.or(again).first().waitFor();
    if (await summary.isVisible()) return;
    const progress = page.getByText(/\(\d+ of \d+\)/);
    const before = await progress.textContent();
    await answer();
    await progress.filter({ hasText: before ?? '' }).waitFor({ state: 'hidden' });
  }
  throw new Error('The end of the round kept asking again.');
}
