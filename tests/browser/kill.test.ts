import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import type { Entry } from '../../src/engine/record';
import { w } from '../../src/words';
import { seeded } from '../files/seeded';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, carryOut, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { type Host, startHost } from './server';
import { settled } from './showScreen';
import { answerZone, askedAgain, type Step, startRound, stepsFor, zoneHeading } from './walkRound';
import { watch } from './watch';

const survey = yearlyRound();
const kills = 20;
/** A touch takes a few tens of milliseconds to be kept and shown: the kill comes before, within and after. Milliseconds. */
const longestWait = 70;

let host: Host;
let tablet: Tablet;

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

/** Every touch of the round in order, on the page that is open now. */
const scriptOn = (page: Page): readonly Step[] => survey.zones.flatMap((zone) => stepsFor(page, survey, zone, true));

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

test('the browser is killed at twenty random moments of a round, and no touch the screen had shown is lost', {
  retry: 0,
  timeout: 600_000,
}, async () => {
  const seed = Number(process.env.KILL_SEED ?? Date.now() % 1_000_000);
  const draw = seeded(seed);
  process.stdout.write(`  KILL_SEED=${seed}\n`);
  host = await startHost();
  tablet = await startTablet();
  let page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  await startRound(page, survey, true);

  let acknowledged = 0;
  let keptUnseen = 0;
  for (let killed = 0; killed < kills; killed += 1) {
    const script = scriptOn(page);
    const safe = script.slice(acknowledged, acknowledged + 1 + draw.below(3));
    await answerZone(new Hand(), safe);
    acknowledged += safe.length;

    const underWay = script[acknowledged]!;
    const shown = answerZone(new Hand(), [underWay]).then(
      () => true,
      () => false,
    );
    await pause(draw.below(longestWait));
    await tablet.kill();
    if (await shown) acknowledged += 1;

    tablet = await startTablet({ profile: tablet.profile });
    const faults = await watch(tablet.context, host.url);
    page = await openApp(tablet, host);
    await page.getByRole('link', { name: w.sculptures.underWay(survey.title), exact: true }).click();
    if (await oneMoreIsThere(page, acknowledged)) {
      acknowledged += 1;
      keptUnseen += 1;
    }
    expect(faults).toEqual([]);
  }
  process.stdout.write(
    `  ${kills} kills in ${acknowledged} touches; ${keptUnseen} were kept before the screen could say so\n`,
  );

  await answerZone(new Hand(), scriptOn(page).slice(acknowledged));
  await askedAgain(page, new Hand());
  await page.getByRole('link', { name: w.round.walk.zones }).click();
  await page.getByText(w.round.walk.progress(24, 24)).waitFor();
  await page.getByRole('link', { name: w.product }).click();
  expectThePlan(await carryOut(page));
});

/**
 * The screen stands as after the last touch it had shown, or one touch further: that one was kept, and the kill came before the
 * screen could say so. Anything else is a touch lost, or a place lost.
 */
async function oneMoreIsThere(page: Page, acknowledged: number): Promise<boolean> {
  const script = scriptOn(page);
  const last = script[acknowledged - 1]?.shows ?? zoneHeading(page, survey.zones[0]!);
  const further = script[acknowledged]!.shows;
  await last.or(further).first().waitFor();
  await settled(page);
  return further.isVisible();
}

/** In the file: each finding of this year once, with the cover the hand had touched, and none beside. */
function expectThePlan(file: Buffer): void {
  const { entries } = JSON.parse(file.toString()) as { entries: Entry[] };
  const made = entries.find(({ kind, body }) => kind === 'round' && body.date === survey.day)?.thing;
  const said = entries
    .filter(({ kind, body }) => kind === 'finding' && body.round === made)
    .map(({ body }) => `${body.zone} ${body.kind} ${(body.coverage as { value: number }).value}`);
  const planned = survey.zones.flatMap(({ thing, earlier, plan }) => [
    ...earlier.map(({ kind, coverage }, i) => {
      const now = plan.what === 'changed' && i === 0 ? plan.to : coverage;
      return `${thing} ${kind} ${now}`;
    }),
    ...(plan.what === 'new' ? [`${thing} ${plan.kind} ${plan.coverage}`] : []),
  ]);
  expect(said.sort()).toEqual(planned.sort());
  expect(entries.filter(({ kind, body }) => kind === 'visit' && body.round === made)).toHaveLength(24);
}
