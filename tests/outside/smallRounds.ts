import type { Page } from 'playwright-core';
import { w } from '../../src/words';
import { Hand } from '../browser/hand';
import { answerZone, startRound, stepsFor } from '../browser/walkRound';
import { type Plan, type YearlyRound, yearlyRound } from '../files/yearlyRound';

const zoneCount = 3;

/** The yearly round cut down to three zones with one earlier finding or two: what matters here is who has the entries. */
export function smallRounds(): YearlyRound {
  const whole = yearlyRound();
  const zones = whole.zones.slice(0, zoneCount).map((zone) => ({ ...zone, plan: { what: 'unchanged' } as Plan }));
  const kept = new Set(zones.map(({ thing }) => thing));
  const entries = whole.entries.filter(({ kind, thing, body }) => {
    const zone = kind === 'zone' ? thing : body.zone;
    return typeof zone !== 'string' || kept.has(zone);
  });
  return { ...whole, entries, zones };
}

/** Walks a round of that day on this tablet: in zone `at` the first finding now covers `to`, the others are as they were. */
export async function walkSmallRound(
  page: Page,
  survey: YearlyRound,
  day: string,
  at: number,
  to: number,
): Promise<void> {
  const zones = survey.zones.map((zone, i) => (i === at ? { ...zone, plan: { what: 'changed', to } as Plan } : zone));
  const round = { ...survey, day, zones };
  await startRound(page, round, false);
  for (const zone of zones) {
    const steps = stepsFor(page, round, zone, false);
    if (zone.plan.what === 'changed') await answerZone(new Hand(), steps);
    // The button names the day where the round before was not last year's.
    else
      await answerZone(new Hand(), [
        { on: page.getByRole('button', { name: /^As (last year|in )/ }), shows: steps[0]!.shows },
      ]);
  }
  const { end } = w.round;
  const skip = page.getByRole('button', { name: end.againSkip, exact: true });
  const close = page.getByRole('button', { name: end.close, exact: true });
  await skip.or(close).first().waitFor();
  // The last one skipped, the button goes: a touch may come too late for it.
  for (let asked = 0; asked < 10 && !(await close.isVisible()); asked += 1)
    await skip.click({ timeout: 2000 }).catch(() => undefined);
  await close.click();
  await page.getByRole('button', { name: w.round.walk.reopen, exact: true }).waitFor();
  await page.getByRole('link', { name: w.round.walk.zones }).click();
  await page.getByRole('link', { name: w.product }).click();
}
