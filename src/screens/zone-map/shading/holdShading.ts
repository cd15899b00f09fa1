import type { WorkInsights } from '../../../actions';
import { stopWordsStanding } from '../../../engine/watch';
import { date, midSentence, w } from '../../../words';
import type { KeyRow, Shading } from './shading';

const words = w.zoneMap;

type HoldCode = keyof typeof words.hold;

const fills: Readonly<Record<HoldCode, KeyRow['fill']>> = {
  holds: 1,
  past: 3,
  back: 4,
  'does not hold': 5,
  unknown: 'plain',
  none: 'open',
};

const key = (Object.keys(fills) as HoldCode[]).map(
  (code): KeyRow => ({ code, fill: fills[code], word: words.hold[code] }),
);

const codeOf = (told: Pick<WorkInsights, 'holds' | 'advice'>, zone: string): HoldCode => {
  const advice = told.advice.find((row) => row.zone === zone);
  const on = told.holds.find((row) => row.zone === zone)?.onNow;
  if (advice?.asksConservator) return 'does not hold';
  if (!on) return 'none';
  if (on.state === 'back' || on.state === 'not clean') return 'back';
  if (advice?.past) return 'past';
  return on.state === 'clear' ? 'holds' : 'unknown';
};

/** How the wax stands on each zone, and when to wax again; no day where a stop word stands. */
export const holdShading = (told: Pick<WorkInsights, 'record' | 'holds' | 'advice'>): Shading => {
  const stopped = new Set(stopWordsStanding(told.record).map(({ zone }) => zone));
  return {
    key,
    from: words.shadeFrom.hold,
    of: (zone) => {
      const code = codeOf(told, zone);
      const day = told.advice.find((row) => row.zone === zone)?.waxAgainBy?.day;
      const then = day && (stopped.has(zone) ? midSentence(w.holds.stopped) : words.waxAgain(date(day)));
      return { code, said: then ? `${words.hold[code]}, ${then}` : words.hold[code] };
    },
  };
};
