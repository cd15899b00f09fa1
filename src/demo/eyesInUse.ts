import {
  closeRound,
  type Desk,
  eyeCheckUnderWay,
  leaveZone,
  type Question,
  rateAgain,
  roundView,
  sayApart,
  sayPatch,
  sculptureRecordOf,
  skipAskingAgain,
  startEyeCheck,
  startRound,
  touchZone,
} from '../actions';
import { fromLogit, logit } from '../engine/condition';
import { patchesOf } from '../engine/eye';
import type { BodyOf } from '../engine/record';
import { type DemoEyeCheck, doneTwice, slips } from './garden/eyes';
import { coverageOf, done } from './walkRound';

type Severity = BodyOf<'finding'>['severity'];

/** What a question answers once it has been read. */
const answered = <T>(question: Question<T>): Promise<T> =>
  new Promise((tell) => {
    const look = () => {
      const value = question.get();
      if (value === undefined) return;
      stop?.();
      tell(value);
    };
    let stop: (() => void) | undefined;
    stop = question.subscribe(look);
    look();
  });

/** The step of the ladder a share lies on, moved by a slip of the eye. */
const said = (share: number, slip: number) => {
  const percent = fromLogit(logit(share) + slip) * 100;
  return coverageOf(percent < 1 ? 0.5 : Math.round(percent));
};

/** The zones drawn are judged again, a little off the first time, as an eye is. */
export const askAgain = async (desk: Desk, sculpture: string, round: string, turn: { n: number }): Promise<void> => {
  const record = await answered(sculptureRecordOf(desk, sculpture));
  for (;;) {
    const asked = (await answered(roundView(desk, round)))?.again;
    if (!asked) return;
    const first = record?.findings.find(
      ({ body }) =>
        body.round === round &&
        body.zone === asked.zone.thing &&
        body.kind === asked.kind &&
        body.origin === asked.origin,
    )?.body.coverage;
    if (!first) return;
    await done(rateAgain(desk, round, said(first.value, slips[turn.n++ % slips.length] ?? 0)));
  }
};

/** Twelve patches judged by an eye that sees a little too much. */
export const checkEye = async (desk: Desk, surveyor: string, { bias }: DemoEyeCheck): Promise<void> => {
  await done(startEyeCheck(desk, surveyor));
  const under = await answered(eyeCheckUnderWay(desk, surveyor));
  if (!under) throw new Error('The demo could not be made: the eye check did not begin.');
  const patches = patchesOf(under.seed);
  for (const [i, { truth }] of patches.entries()) {
    await done(sayPatch(desk, surveyor, { truth, said: said(truth, bias + (slips[i % slips.length] ?? 0)) }));
  }
};

/** Two people beside each other, neither seeing what the other said. */
export const roundTwice = async (
  desk: Desk,
  sculpture: string,
  zones: ReadonlyMap<string, string>,
  setSurveyor: (surveyor: string) => void,
  { steward, helper }: { readonly steward: string; readonly helper: string },
): Promise<void> => {
  const start = { type: 'autumn', date: doneTwice.day, wet: 'dry', washed: 'before wash', ownEye: true } as const;
  const rounds: Record<'steward' | 'helper', string> = { steward: '', helper: '' };
  for (const who of ['steward', 'helper'] as const) {
    setSurveyor(who === 'steward' ? steward : helper);
    rounds[who] = (await done(startRound(desk, sculpture, start))).round;
  }
  await done(sayApart(desk, rounds.steward, rounds.helper));
  // The one begun later is walked first, so that neither has the other's answers before it.
  for (const who of ['helper', 'steward'] as const) {
    setSurveyor(who === 'steward' ? steward : helper);
    for (const [letter, zone] of zones) await judge(desk, rounds[who], zone, letter, who);
    await done(skipAskingAgain(desk, rounds[who]));
    await done(closeRound(desk, rounds[who]));
  }
  setSurveyor(steward);
};

const judge = async (desk: Desk, round: string, zone: string, letter: string, who: 'steward' | 'helper') => {
  const rows = doneTwice.zones.filter((row) => row.letter === letter && row[who] > 0);
  for (const row of rows) {
    const severity: Severity =
      who === 'helper' && 'helperSeverity' in row ? row.helperSeverity : 'severity' in row ? row.severity : 'slight';
    await done(touchZone(desk, round, zone, { do: 'kind', kind: row.kind, measure: 'area' }));
    await done(touchZone(desk, round, zone, { do: 'origin', origin: 'metal' }));
    await done(touchZone(desk, round, zone, { do: 'cover', coverage: coverageOf(row[who]) }));
    await done(touchZone(desk, round, zone, { do: 'severity', severity }));
  }
  await done(leaveZone(desk, round, zone, { how: rows.length > 0 ? 'next' : 'nothing' }));
};
