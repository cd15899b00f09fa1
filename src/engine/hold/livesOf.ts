import { seedOf } from '../chance';
import { type CommonShape, commonShape, type Interval } from '../life';
import type { SculptureRecord } from '../record';
import { curveOf, type ToBorrow } from './curveOf';
import { wholeCollection } from './exposureGroup';
import type { Hold, HoldEvent, ZoneHolds } from './hold';
import { intervalOf, telling } from './interval';
import type { HoldCurve, Life } from './life';
import { holdNumbers } from './numbers';
import { because } from './reasonCodes';

/** The holds of one work. */
export interface HoldsOfWork {
  /** The holds say all that is asked; kept ones come without it. */
  readonly record?: SculptureRecord;
  readonly zones: readonly ZoneHolds[];
}

const intervals = (holds: readonly Hold[]): readonly Interval[] => telling(holds).map(intervalOf);

const lastSpan = ({ spans }: ZoneHolds): number => spans.length - 1;

/** Holds of the surroundings a zone has now: earlier spans were of another surface, or had the cause. */
const now = (zone: ZoneHolds): readonly Interval[] =>
  intervals(zone.holds.filter(({ span }) => span === lastSpan(zone)));

const firstRemoved = ({ spans }: ZoneHolds): number => spans.findIndex(({ causeRemoved }) => causeRemoved);

/** As entered. */
const dateRemoved = (zone: ZoneHolds): string =>
  zone.spans[firstRemoved(zone)]?.treatments.find(({ type }) => type === 'cause removed')?.date ?? '';

const toBorrow = ({ fit, holds, ends }: HoldCurve): ToBorrow | null =>
  fit ? { shape: fit.shape.value, holds, ends } : null;

/** A group borrows how alike holds of a group are; put together, groups that differ look flatter than any of them is. */
const lentBy = (common: CommonShape | null, whole: HoldCurve): ToBorrow | null =>
  common
    ? { shape: Math.min(common.shape, holdNumbers.mostAlike.value), holds: whole.holds, ends: whole.ends }
    : toBorrow(whole);

const lifeOf = (
  group: string,
  event: HoldEvent,
  zones: readonly ZoneHolds[],
  borrow: ToBorrow | null | 'is the whole',
  seed: number,
): Life => {
  const seedHere = seedOf(`${group} ${event}`, seed);
  const curve = curveOf(zones.map(now), borrow, seedHere);
  const current = zones.flatMap((zone) => zone.holds.filter(({ span }) => span === lastSpan(zone)));
  const inPassing = current.filter((hold) => hold.inPassing).length;
  const earlier = zones.reduce((sum, zone) => sum + zone.holds.length, 0) - current.length;
  const reasons = [
    ...curve.reasons,
    ...(earlier > 0 ? [because('hold: earlier spans left out', { holds: earlier })] : []),
    ...(inPassing > 0 ? [because('hold: noticed in passing, so many', { holds: inPassing })] : []),
  ];
  const removed = zones.filter((zone) => firstRemoved(zone) >= 0);
  const life: Life = { ...curve, group, event, inPassing, reasons };
  if (removed.length === 0) return life;
  const side = (without: boolean) =>
    curveOf(
      removed.map((zone) => intervals(zone.holds.filter(({ span }) => span >= firstRemoved(zone) === without))),
      borrow === 'is the whole' ? toBorrow(curve) : borrow,
      seedHere + (without ? 2 : 1),
    );
  return {
    ...life,
    withAndWithout: {
      with: side(false),
      without: side(true),
      removed: removed.map((zone) => ({ zone: zone.zone, date: dateRemoved(zone) })),
    },
  };
};

/** How alike the holds of one zone are; from three zones on, as a curve is. */
const within = (zones: readonly ZoneHolds[]): CommonShape | null => {
  const common = commonShape(zones.map(now));
  return common && common.clusters >= holdNumbers.zonesForCurve.value ? common : null;
};

const events: readonly HoldEvent[] = ['spot', 'cover'];

/**
 * How long coatings last, for each exposure group of the collection and for the whole of it ('all', last), one row for each event
 * that occurs. Months. Ranges are over zones drawn anew; `seed` is any whole number, the same gives the same ranges.
 */
export const livesOf = (all: readonly HoldsOfWork[], seed: number): Life[] => {
  // By name, so that the draws do not hang on the order works or zones come in.
  const zones = all.flatMap((work) => work.zones).sort((a, b) => (a.zone < b.zone ? -1 : a.zone > b.zone ? 1 : 0));
  return events.flatMap((event) => {
    const ofEvent = zones.filter((zone) => zone.event === event && zone.holds.length + zone.noHolds.length > 0);
    if (ofEvent.length === 0) return [];
    const groups = [...new Set(ofEvent.map(({ group }) => group))].sort();
    const together = groups.map((group) => ofEvent.filter((zone) => zone.group === group).flatMap(now));
    const common = commonShape(together);
    const withinGroups = common && common.clusters > 1 ? common : null;
    const whole = {
      ...lifeOf(wholeCollection, event, ofEvent, 'is the whole', seed),
      withinZones: within(ofEvent),
      withinGroups,
    };
    const borrow = lentBy(withinGroups, whole);
    return [
      ...groups.map((group) =>
        lifeOf(
          group,
          event,
          ofEvent.filter((zone) => zone.group === group),
          borrow,
          seed,
        ),
      ),
      whole,
    ];
  });
};
