/** npm run bench:touch: how long after a finger's touch the screen answers, through a whole round, at a stated slowdown. Asserts nothing. */
import { loadavg } from 'node:os';
import { carryIn, fileOf, openApp } from '../browser/app';
import { startTablet } from '../browser/chromium';
import { Finger } from '../browser/finger';
import { startHost } from '../browser/server';
import { startRound, stepsFor } from '../browser/walkRound';
import { yearlyRound } from '../files/yearlyRound';
import { median, percentile } from './figures';
import { inpOf, interactionsOf, noteInteractions } from './interactions';
import { slow, slowdown } from './slowed';

const survey = yearlyRound();
const host = await startHost();
const ms = (value: number | undefined) => `${Math.round(value ?? Number.NaN)} ms`;

async function timeRound(ownEye: boolean): Promise<void> {
  const tablet = await startTablet();
  try {
    await tablet.context.addInitScript(noteInteractions);
    const page = await openApp(tablet, host);
    page.setDefaultTimeout(60_000);
    await carryIn(page, fileOf(survey));
    await startRound(page, survey, ownEye);
    // A new document: what came before is not counted.
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await slow(page);
    const finger = await Finger.on(page);
    let missed = 0;
    for (const zone of survey.zones)
      for (const { on, shows } of stepsFor(page, survey, zone, ownEye)) {
        await finger.touch(on);
        // A hand that missed a page still moving touches again; how often is told.
        if (
          await shows.waitFor({ timeout: 6000 }).then(
            () => false,
            () => true,
          )
        ) {
          missed++;
          await finger.touch(on);
          await shows.waitFor();
        }
      }
    const notTouched = await finger.notTouched();
    if (notTouched.length > 0) throw new Error(`Not all came of a finger: ${notTouched.join(', ')}`);
    const touches = await interactionsOf(page);
    const all = touches.map((one) => one.ms);
    const inp = inpOf(touches, finger.touches);
    console.log(
      `own eye first ${ownEye ? 'on' : 'off'}: ${finger.touches} touches, ${missed} of them missed, ${all.length} over 16 ms`,
    );
    console.log(
      `  INP ${ms(inp?.ms)} (good: 200 or less), on “${inp?.on}”: waited ${ms(inp?.waited)}, worked ${ms(inp?.handled)}`,
    );
    console.log(`  median ${ms(median(all))}, 95 of 100 ${ms(percentile(all, 0.95))}, slowest ${ms(Math.max(...all))}`);
  } finally {
    await tablet.close();
  }
}

try {
  for (const ownEye of [false, true]) await timeRound(ownEye);
} finally {
  await host.stop();
}
console.log(`CPU slowed ${slowdown} times; load ${loadavg()[0]?.toFixed(1)}`);
