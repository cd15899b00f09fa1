import type { Insights } from '../../actions';
import type { Advice, ZoneHolds } from '../../engine/hold';
import type { SculptureRecord } from '../../engine/record';
import { stopWordsStanding } from '../../engine/watch';
import { date, type NameOfThing, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { type HoldBarRow, HoldBars, reach } from '../parts/charts';
import { Fold } from '../parts/Fold';
import { holdBarRows } from '../parts/holdBarRows';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';

const words = w.overTime;

interface HoldsProps {
  readonly record: SculptureRecord;
  readonly insights: Insights;
  readonly only: string | undefined;
  readonly nameOf: NameOfThing;
}

/** How long the coatings of this work kept the green away, zone by zone, and what follows. */
export function Holds({ record, insights, only, nameOf }: HoldsProps) {
  const rows = insights.holds
    .filter(({ zone }) => only === undefined || zone === only)
    .filter(({ holds, noHolds }) => holds.length + noHolds.length > 0);
  if (rows.length === 0) {
    return (
      <Section title={words.holds} lead={words.holdsNone}>
        <div className="not-printed">
          <LinkButton to={pathTo.logbook(record.sculpture.thing)}>{words.toLogbook}</LinkButton>
        </div>
      </Section>
    );
  }
  const stopped = new Set(stopWordsStanding(record).map((seen) => seen.zone));
  const told = rows.filter(lookedAt);
  const bars = new Map(rows.map((row) => [row.zone, holdBarRows(row)]));
  const all = [...bars.values()].flat();
  const most = reach(all);
  const rest = rows.filter((row) => !lookedAt(row));
  const zoneHold = (row: ZoneHolds, i: number) => (
    <ZoneHold
      key={row.zone}
      holds={row}
      advice={insights.advice.find(({ zone }) => zone === row.zone)}
      stopped={stopped.has(row.zone)}
      zone={record.zones.find(({ thing }) => thing === row.zone)}
      nameOf={nameOf}
      bars={bars.get(row.zone) ?? []}
      most={most}
      legendFor={i === 0 ? all : []}
    />
  );
  return (
    <Section title={words.holds} lead={words.holdsWhat}>
      {(told.length > 0 ? told : rows).map(zoneHold)}
      {told.length > 0 && rest.length > 0 && (
        <Fold show={words.yearlyOnly(rest.length)} hide={words.yearlyOnlyHide} alsoOnPaper>
          {rest.map(zoneHold)}
        </Fold>
      )}
    </Section>
  );
}

/** True where a look between the rounds set an end: these bars tell most. */
const lookedAt = ({ holds, noHolds }: ZoneHolds): boolean =>
  holds.some(({ lower }) => lower > 0) ||
  noHolds.some(({ reasons }) => reasons.some(({ code }) => code === 'hold: no clean start'));

interface ZoneHoldProps {
  readonly holds: ZoneHolds;
  readonly advice: Advice | undefined;
  /** A stop word stands here: no day to wax is named before the conservator has spoken. */
  readonly stopped: boolean;
  readonly zone: SculptureRecord['zones'][number] | undefined;
  readonly nameOf: NameOfThing;
  readonly bars: readonly HoldBarRow[];
  /** One measure for all zones of the page, so that they may be held against each other. */
  readonly most: number;
  readonly legendFor: readonly HoldBarRow[];
}

function ZoneHold({ holds, advice, stopped, zone, nameOf, bars, most, legendFor }: ZoneHoldProps) {
  const { shortening, event, onNow } = holds;
  const title = words.zone(zone?.body.letter ?? '?', zone?.body.name ?? '');
  const reasons = [
    ...holds.reasons,
    ...(advice?.reasons ?? []),
    ...(advice?.nextLook?.reasons ?? []),
    ...holds.noHolds.flatMap((none) => none.reasons),
  ];
  return (
    <article className="zone-hold card" aria-label={title}>
      <h3>{title}</h3>
      <p>
        <span className="strong">{words.words[shortening.word]}.</span>{' '}
        {shortening.lastPair && words.lastPair[shortening.lastPair]}
      </p>
      <HoldBars title={words.barsTitle} titleUnseen rows={bars} most={most} legendFor={legendFor} />
      <ul className="bare stack tight">
        {onNow && <li>{words.onNow[onNow.state](date(onNow.from))}</li>}
        {advice && <Advised advice={advice} stopped={stopped} />}
        <li className="soft">{words.events[event]}</li>
      </ul>
      <Fold show={words.why} hide={words.whyHide} alsoOnPaper>
        <Reasons reasons={reasons} nameOf={nameOf} />
      </Fold>
    </article>
  );
}

function Advised({ advice, stopped }: { readonly advice: Advice; readonly stopped: boolean }) {
  const { waxAgainBy, asksConservator, nextLook, ifCoated } = advice;
  const range = waxAgainBy && [waxAgainBy.low, waxAgainBy.high];
  return (
    <>
      {asksConservator && <li className="strong">{words.asks}</li>}
      {!asksConservator && stopped && waxAgainBy && <li className="strong">{w.holds.stopped}.</li>}
      {!asksConservator && !stopped && waxAgainBy && (
        <li>
          {range?.every((day) => day !== null)
            ? words.waxAgain(date(waxAgainBy.day), date(range[0] ?? ''), date(range[1] ?? ''))
            : words.waxAgainOpen(date(waxAgainBy.day))}
        </li>
      )}
      {nextLook && (
        <li>
          {words.nextLook(date(nextLook.day))}{' '}
          {nextLook.low && nextLook.high && words.nextLookBetween(date(nextLook.low), date(nextLook.high))}
        </li>
      )}
      {ifCoated?.low && ifCoated.high && (
        <li>{words.ifCoated(date(ifCoated.on), date(ifCoated.low), date(ifCoated.high))}</li>
      )}
    </>
  );
}
