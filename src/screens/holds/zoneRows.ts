import type { CollectionInsights, WorkInsights } from '../../actions';
import type { Advice, ZoneHolds } from '../../engine/hold';
import type { Thing } from '../../engine/record';
import { stopWordsStanding } from '../../engine/watch';

/** As much of what was worked out as this screen reads. */
export interface HoldsTold extends Pick<CollectionInsights, 'lives' | 'workingOut'> {
  readonly perWork: readonly Pick<WorkInsights, 'record' | 'holds' | 'advice'>[];
}

/** One living zone with a coating written down, as the list shows it. */
export interface ZoneRow {
  readonly sculpture: Thing<'sculpture'>;
  readonly zone: Thing<'zone'>;
  readonly holds: ZoneHolds;
  readonly advice: Advice;
  /** A stop word stands here: it is not waxed before the conservator has spoken. */
  readonly stopped: boolean;
}

/** True where something is asked for: a coating, a look, or the conservator. */
export const asks = ({ advice }: ZoneRow): boolean =>
  advice.asksConservator || advice.waxAgainBy !== null || advice.nextLook !== null || advice.past;

/** Where waxing does not hold first, then by the day that comes first, then in walking order. */
const dayOf = ({ advice }: ZoneRow): string => {
  if (advice.asksConservator) return '';
  const days = [advice.waxAgainBy?.day, advice.nextLook?.day].filter((day) => day !== undefined).sort();
  return days[0] ?? '9999';
};

const byNumber = new Intl.Collator('en', { numeric: true });

export const zoneRows = ({ perWork }: Pick<HoldsTold, 'perWork'>): readonly ZoneRow[] =>
  perWork
    .flatMap(({ record, holds, advice }) => {
      const { sculpture } = record;
      const stopped = new Set(stopWordsStanding(record).map((seen) => seen.zone));
      return advice.flatMap((one): ZoneRow[] => {
        const zone = record.zones.find(({ thing }) => thing === one.zone);
        const own = holds.find((row) => row.zone === one.zone);
        return zone && own && own.holds.length + own.noHolds.length > 0
          ? [{ sculpture, zone, holds: own, advice: one, stopped: stopped.has(one.zone) }]
          : [];
      });
    })
    .sort(
      (a, b) =>
        dayOf(a).localeCompare(dayOf(b)) ||
        byNumber.compare(a.sculpture.body.number, b.sculpture.body.number) ||
        a.zone.body.order - b.zone.body.order,
    );
