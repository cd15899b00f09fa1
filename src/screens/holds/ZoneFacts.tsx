import type { Advice, CoatingOn, DayFigure } from '../../engine/hold';
import type { Reason } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';
import { MonthsText } from './MonthsText';

const words = w.holds;

const rangeOf = ({ low, high }: Pick<DayFigure, 'low' | 'high'>): string | null => {
  if (low !== null && high !== null) return low === high ? null : words.range(date(low), date(high));
  if (low !== null) return words.notBefore(date(low));
  return high === null ? words.noRange : words.notAfter(date(high));
};

/** The coating that lies on a zone, and what was seen of it since. */
export function OnNow({ on, past }: { readonly on: CoatingOn | null; readonly past: boolean }) {
  if (!on) return <span className="soft">{words.nothingOn}</span>;
  const what = treatmentOf(on.type)?.name ?? on.type;
  const seen = date((on.state === 'clear' ? on.lastClear : on.firstSeen) ?? '');
  return (
    <>
      <span>
        {on.from === on.to ? words.coated(what, date(on.from)) : words.coatedBetween(what, date(on.from), date(on.to))}
      </span>
      <span className="soft small">{words.state[on.state](seen)}</span>
      {past && on.state !== 'back' && <span className="chip">{words.past}</span>}
    </>
  );
}

const param = (reasons: readonly Reason[], code: string): Reason['params'] | undefined =>
  reasons.find((reason) => reason.code === code)?.params;

/** When to wax again, or in a few words why there is no day. */
export function WaxAgain({ advice, stopped }: { readonly advice: Advice; readonly stopped: boolean }) {
  const { waxAgainBy, asksConservator, expected, reasons } = advice;
  if (asksConservator) return <span className="strong">{words.doesNotHold}</span>;
  if (stopped) return <span className="strong">{words.stopped}</span>;
  if (waxAgainBy) {
    const range = rangeOf(waxAgainBy);
    return (
      <>
        <span className="strong">{date(waxAgainBy.day)}</span>
        {range && <span className="soft small">{range}</span>}
        {expected && (
          <span className="soft small">
            {words.expected} <MonthsText figure={expected} />
          </span>
        )}
      </>
    );
  }
  const between = param(reasons, 'hold: level reached in between');
  if (between) return <span>{words.between(date(String(between.first)), date(String(between.last)))}</span>;
  if (param(reasons, 'hold: green is back')) return <span>{words.greenBack}</span>;
  if (param(reasons, 'hold: none came back')) return <span>{words.noNeed}</span>;
  return <span className="soft">{words.notKnown}</span>;
}

/** When a look tells most. */
export function NextLook({ advice }: { readonly advice: Advice }) {
  const { nextLook, ifCoated, asksConservator, reasons } = advice;
  if (nextLook) {
    return (
      <>
        <span className="strong">{date(nextLook.day)}</span>
        {nextLook.low && nextLook.high && (
          <span className="soft small">{words.bestBetween(date(nextLook.low), date(nextLook.high))}</span>
        )}
      </>
    );
  }
  if (ifCoated && !(asksConservator && param(reasons, 'hold: green right after the coating'))) {
    return (
      <>
        <span>{words.ifCoated(date(ifCoated.on), date(ifCoated.day))}</span>
        {ifCoated.low && ifCoated.high && (
          <span className="soft small">{words.bestBetween(date(ifCoated.low), date(ifCoated.high))}</span>
        )}
      </>
    );
  }
  if (
    reasons.some(({ code }) => code.endsWith('yearly round will do') || code === 'hold: clear past all that was seen')
  )
    return <span>{words.yearlyRound}</span>;
  if (param(reasons, 'hold: look after the next coating')) return <span>{words.afterCoating}</span>;
  return <span className="soft">{words.notKnown}</span>;
}
