import type { BodyOf, Reason } from '../record';
import { hotChecks, hotWorkRule } from '../trade';
import { minutesOfOwn } from './fireWatch';
import { because } from './reasonCodes';

type HotDay = BodyOf<'hotDay'>;
type InsertCare = BodyOf<'insertCare'>;
type InsertAfter = BodyOf<'insertAfter'>;

/** What is known of a day of hot work and of the inserts near it. */
export interface HotDayFacts {
  readonly day: HotDay;
  /** Of the inserts of the work, by the name of the insert. */
  readonly cares: ReadonlyMap<string, InsertCare>;
  /** Of this day, by the name of the insert. */
  readonly afters: ReadonlyMap<string, InsertAfter>;
  /** Inserts a temperature of this day is written down of: they were near the heat, whatever the card says of them later. */
  readonly read?: readonly string[];
  /** All inserts of the work. */
  readonly inserts: readonly string[];
}

/** Taken out of the work on that day: no flame comes near it. */
export const isOut = (care: InsertCare | undefined, date: string): boolean =>
  care?.takenOut !== undefined && care.takenOut <= date && (care.putBack === undefined || care.putBack > date);

const hasLimit = (care: InsertCare | undefined): boolean => care?.most !== undefined && care.limitBy !== undefined;

/** What is still open before anything is lit. The app lights nothing and stops nobody: it says so on top of the card. */
export const againstStarting = ({ day, cares, inserts }: HotDayFacts): Reason[] => {
  const near = day.inserts ?? [];
  const clear = hotWorkRule('clear zone').value;
  const watch = hotWorkRule('watch at least').value;
  const open = hotChecks.filter(({ id }) => !day.checked.includes(id)).length;
  return [
    ...(day.permit.trim() === '' ? [because('heat: no permit')] : []),
    ...(day.authorisedBy.role.trim() === '' ? [because('heat: nobody authorised')] : []),
    ...(day.watcher ? [] : [because('heat: no watcher')]),
    ...(day.clearZone < clear ? [because('heat: clear zone short', { metres: day.clearZone, rule: clear })] : []),
    ...(day.watchMinutes === 0
      ? [because('heat: watch has no length')]
      : day.watchMinutes < watch
        ? [because('heat: watch short', { minutes: day.watchMinutes, rule: watch })]
        : []),
    ...(open > 0 ? [because('heat: checks open', { count: open })] : []),
    ...inserts
      .filter((insert) => !near.includes(insert) && !isOut(cares.get(insert), day.date))
      .map((insert) => because('heat: insert not on the list', { insert })),
    ...limitsMissing(day, cares),
    ...near
      .filter((insert) => !cares.get(insert)?.method)
      .map((insert) => because('heat: insert without a way', { insert })),
  ];
};

const limitsMissing = (day: HotDay, cares: HotDayFacts['cares']): Reason[] =>
  (day.inserts ?? [])
    .filter((insert) => !isOut(cares.get(insert), day.date) && !hasLimit(cares.get(insert)))
    .map((insert) => because('heat: insert without limit', { insert }));

/** Minutes of watch that the record bears out: counted by a tablet, or by the watcher's own watch; else from end to word. */
export const minutesKept = ({ workEnded, watchKept }: Pick<HotDay, 'workEnded' | 'watchKept'>): number => {
  if (!workEnded || !watchKept) return 0;
  const { counted, own, at } = watchKept;
  if (counted === undefined && own === undefined)
    return Math.max(0, Math.floor((Date.parse(at) - Date.parse(workEnded)) / 60_000));
  return Math.max(counted ?? 0, own ? minutesOfOwn(own) : 0);
};

/** It was photographed after the heat, and the flame was not lit again since. */
export const seenAfter = ({ wentOn }: Pick<HotDay, 'wentOn'>, after: InsertAfter | undefined): boolean =>
  after !== undefined && after.photos.length > 0 && (wentOn === undefined || Date.parse(after.at) > Date.parse(wentOn));

/** What stands against closing the day. Empty: it can be closed. */
export const againstClosing = ({ day, cares, afters, read = [] }: Omit<HotDayFacts, 'inserts'>): Reason[] => [
  ...watchOpen(day),
  ...limitsMissing(day, cares),
  ...[...new Set([...(day.inserts ?? []), ...read])]
    .filter((insert) => !seenAfter(day, afters.get(insert)))
    .map((insert) => because('heat: no photo after', { insert })),
];

const watchOpen = (day: HotDay): Reason[] => {
  if (day.watchMinutes === 0) return [because('heat: watch has no length')];
  if (!day.workEnded) return [because('heat: work not ended')];
  if (!day.watchKept) return [because('heat: watch not said kept', { minutes: day.watchMinutes })];
  const kept = minutesKept(day);
  return kept < day.watchMinutes ? [because('heat: watch too short', { kept, asked: day.watchMinutes })] : [];
};
