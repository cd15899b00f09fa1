import type { SculptureScore } from '../condition';
import type { ZoneHolds } from '../hold';
import type { Reason, SculptureRecord } from '../record';
import { holdTripwire } from './holdTripwire';
import { fundTripwire, type MoneyLists, quoteTripwire } from './moneyTripwire';
import { because } from './reasonCodes';
import { stopWordsSeen } from './stopWordsSeen';
import { type TripwireSortId, tripwireSortOf } from './tripwireSorts';
import { against, cannotTell, met, notMet, type Tripwire, type TripwireState } from './tripwireState';

/** What is known of one work, as far as tripwires read it. All of it is null or empty for what belongs to no work. */
export interface TripwireFacts {
  /** With all its rounds where a tripwire asks for them (see tripwireSorts), else as far as the first pass keeps it. */
  readonly record: SculptureRecord | null;
  /** Of the latest round. */
  readonly score: SculptureScore | null;
  /** Zones clearly worse than in the last comparable round; null where nobody compared. */
  readonly clearlyWorse: ReadonlySet<string> | null;
  readonly holds: readonly ZoneHolds[];
  readonly lists: MoneyLists;
}

interface Asked {
  readonly wire: Tripwire;
  readonly facts: TripwireFacts;
  /** Day of the decision: what was known then is no news. */
  readonly decided: string;
  readonly today: string;
}

/** The latest round and its day, if it came after the decision; else why it says nothing. */
const news = ({ facts: { record, score }, decided }: Asked): { readonly day: string } | { readonly why: Reason } => {
  const day = record?.rounds.find(({ thing }) => thing === score?.round)?.body.date;
  if (day === undefined) return { why: because('tripwire: nobody looked') };
  return day < decided ? { why: because('tripwire: round before decision', { date: day }) } : { day };
};

const ofRound =
  (judge: (asked: Asked, score: SculptureScore, day: string) => TripwireState) =>
  (asked: Asked): TripwireState => {
    const told = news(asked);
    const { score } = asked.facts;
    return 'why' in told || !score ? cannotTell(...('why' in told ? [told.why] : [])) : judge(asked, score, told.day);
  };

const zoneIn = (score: SculptureScore, zone: string | undefined) => score.zones.find((one) => one.zone === zone);

const greenShare = ofRound(({ wire: { zone = '', level = 0 } }, score, date) => {
  const seen = zoneIn(score, zone);
  if (!seen) return cannotTell(because('tripwire: zone not judged', { zone, date }));
  const { green } = seen.active;
  const share = (m2: number): number => Math.min(1, m2 / seen.area.m2);
  const figure = { value: share(green.value), low: share(green.low), high: share(green.high) };
  const params = { zone, share: figure.value, low: figure.low, high: figure.high, level: level / 100, date };
  return against(figure, level / 100, 'over', date, because('tripwire: green share', params));
});

/**
 * A round that left zones out says less of the whole: what it came to only counts as not met where the zones left out could not
 * change that, however bad they were. `worst` is the figure then.
 */
const ofWhole = (state: TripwireState, worst: boolean, score: SculptureScore): TripwireState =>
  state.word === 'not met' && worst
    ? cannotTell(...state.reasons, because('tripwire: not all seen', { percent: score.seenShare }))
    : state;

const areaOver = (what: 'green' | 'bare') =>
  ofRound(({ wire: { zone, level = 0 } }, score, date) => {
    const from = zone === undefined ? score : zoneIn(score, zone);
    if (!from) return cannotTell(because('tripwire: zone not judged', { zone: zone ?? '', date }));
    const { value, low, high } = from.active[what];
    const params = { what, m2: value, low, high, level, date };
    const state = against({ value, low, high }, level, 'over', date, because('tripwire: area', params));
    const unseen = score.unscored.reduce((sum, { m2 }) => sum + m2, 0);
    return zone === undefined ? ofWhole(state, value + unseen > level, score) : state;
  });

const indexUnder = ofRound(({ wire: { zone, level = 0 } }, score, date) => {
  const from = zone === undefined ? score : zoneIn(score, zone);
  if (!from || from.value === null || from.low === null || from.high === null)
    return cannotTell(because('tripwire: zone not judged', { zone: zone ?? '', date }));
  const { value, low, high } = from;
  const reason = because('tripwire: index', { index: value, low, high, level, date });
  const state = against({ value, low, high }, level, 'under', date, reason);
  if (zone !== undefined) return state;
  // With the zones left out as good as the best that was seen it would lie over the line again.
  const sure = (score.ifUnseenBest ?? value) < level;
  return state.word === 'met' && !sure
    ? { ...state, word: 'perhaps' }
    : ofWhole(state, (score.ifUnseenWorst ?? value) < level, score);
});

const surelyWorse = ofRound(({ wire, facts: { clearlyWorse } }, _, date) => {
  if (!clearlyWorse) return cannotTell(because('tripwire: nothing to compare', { date }));
  const zones = [...clearlyWorse].filter((zone) => wire.zone === undefined || wire.zone === zone);
  if (zones.length === 0) return notMet(because('tripwire: not surely worse', { date }));
  return met(date, ...zones.map((zone) => because('tripwire: surely worse', { zone, date })));
});

const stopWord = ({ wire, facts: { record }, decided }: Asked): TripwireState => {
  if (!record?.rounds.some(({ body }) => body.date >= decided)) return cannotTell(because('tripwire: nobody looked'));
  const seen = stopWordsSeen(record, decided).filter(({ zone }) => wire.zone === undefined || wire.zone === zone);
  const [latest] = seen;
  if (!latest) return notMet(because('tripwire: no stop word'));
  return met(latest.date, ...seen.slice(0, 3).map((one) => because('tripwire: stop word', { ...one })));
};

const dayComes = ({ wire: { by = '9999-12-31' }, today }: Asked): TripwireState => {
  const reason = because('tripwire: day', { date: by });
  return today >= by ? met(by, reason) : notMet(reason);
};

const ofZone = ({ facts: { holds }, wire }: Asked) => holds.find(({ zone }) => zone === wire.zone);

const sorts: Readonly<Record<TripwireSortId, (asked: Asked) => TripwireState>> = {
  'hold over': (asked) => holdTripwire(asked.wire, 'over', ofZone(asked), asked.decided),
  'hold under': (asked) => holdTripwire(asked.wire, 'under', ofZone(asked), asked.decided),
  'green share over': greenShare,
  'green over': areaOver('green'),
  'bare over': areaOver('bare'),
  'index under': indexUnder,
  'surely worse': surelyWorse,
  'stop word': stopWord,
  'fund reaches': ({ wire, facts, today }) => fundTripwire(wire, facts.lists, today),
  'quote ends': ({ facts, today }) => quoteTripwire(facts.lists, today),
  'day comes': dayComes,
};

/** Where one tripwire stands, from what is known today. `decided` and `today` are YYYY-MM-DD. */
export const evaluateTripwire = (
  wire: Tripwire,
  facts: TripwireFacts,
  decided: string,
  today: string,
): TripwireState => {
  const { sort } = wire;
  if (!tripwireSortOf(sort)) return cannotTell(because('tripwire: sort not known', { sort }));
  return sorts[sort as TripwireSortId]({ wire, facts, decided, today });
};
