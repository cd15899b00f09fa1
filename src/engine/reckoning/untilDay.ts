import type { Advice, ZoneHolds } from '../hold';
import { holdNumbers } from '../hold';
import { addDays, dayRange, type SculptureRecord } from '../record';
import type { FirstPass } from './firstPass';

/** A next look is put on a walk up to three days off the day wished for. */
const offTheWish = 3;

/** Days the record names; what is dated after today counts from its day on. */
const daysIn = ({ treatments, looks, rounds, zones }: SculptureRecord): readonly string[] => [
  ...treatments.flatMap(({ body }) => Object.values(dayRange(body.date))),
  ...looks.map(({ body }) => body.date),
  ...rounds.map(({ body }) => body.date),
  ...zones.flatMap(({ body }) =>
    [body.split?.on ?? [], body.joined?.on ?? [], body.versions.map((v) => v.since)].flat(),
  ),
];

const daysOf = (advice: Advice, onNow: ZoneHolds['onNow'] | undefined): readonly string[] => [
  ...(advice.nextLook ? [addDays(advice.nextLook.day, -offTheWish), addDays(advice.nextLook.day, 1)] : []),
  ...(advice.ifCoated ? [addDays(advice.ifCoated.on, 1)] : []),
  // Past the time half of them hold: the day after it.
  ...(onNow && advice.expected
    ? [addDays(onNow.to, Math.round(advice.expected.value * holdNumbers.daysInMonth.value) + 1)]
    : []),
];

/** The first day after today on which figures change with nothing said anew; null where no date changes them. */
export const untilDay = (first: FirstPass, advice: readonly Advice[], today: string): string | null => {
  const onNow = new Map(first.holds.map((zone) => [zone.zone, zone.onNow]));
  const tomorrow = addDays(today, 1);
  const near = advice.some(
    ({ nextLook }) => nextLook && nextLook.day >= today && addDays(nextLook.day, -offTheWish) <= today,
  );
  const days = [...daysIn(first.record), ...advice.flatMap((one) => daysOf(one, onNow.get(one.zone)))];
  return [...days.filter((day) => day > today), ...(near ? [tomorrow] : [])].sort()[0] ?? null;
};
