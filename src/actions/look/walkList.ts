import type { Advice, ZoneHolds } from '../../engine/hold';
import { addDays } from '../../engine/record';
import type { WorkPassed, ZonePassed } from './patrolWalk';

/** Why a zone is on the list of this walk. 'today': it was looked at today and stays where the hand left it. */
export type WhyOnList = 'today' | 'not sure' | 'due' | 'never looked at' | 'not known';

export interface ZoneOnList extends ZonePassed {
  /** Null: not for this walk, a touch away. */
  readonly why: WhyOnList | null;
  /** The day a look would tell most, where that is known. */
  readonly due: string | null;
  /** The last day it was seen clear on this coating, by a look or a round; null where nobody has. */
  readonly clearOn: string | null;
}

export interface WorkOnList {
  readonly work: WorkPassed;
  readonly listed: readonly ZoneOnList[];
  readonly rest: readonly ZoneOnList[];
}

export interface WalkList {
  readonly works: readonly WorkOnList[];
  /** Looked at today, and listed and not yet. */
  readonly looked: number;
  readonly left: number;
  /** The earliest day after today a look is due; null where none is known. */
  readonly nextDue: string | null;
}

/** What the holds say of a zone, where they were worked out. */
export interface HoldSaid {
  readonly advice: Advice | undefined;
  readonly onNow: ZoneHolds['onNow'];
}

/** A walk is made about once a week: what is due before the next one belongs to this one. */
export const daysToNextWalk = 6;

const backOnIt = new Set(['back', 'not clean']);

const clearOn = ({ last, coated }: ZonePassed, said: HoldSaid | undefined): string | null => {
  if (said?.onNow?.lastClear) return said.onNow.lastClear;
  return last?.body.result === 'clear' && coated !== null && last.body.date >= coated ? last.body.date : null;
};

const whyOf = (zone: ZonePassed, said: HoldSaid | undefined, today: string): WhyOnList | null => {
  const { last, coated } = zone;
  if (last?.body.date === today) return 'today';
  if (last?.body.result === 'unsure') return 'not sure';
  if (coated === null) return null;
  const since = last && last.body.date >= coated ? last : undefined;
  if (since?.body.result === 'green' || (said?.onNow && backOnIt.has(said.onNow.state))) return null;
  const due = said?.advice?.nextLook?.day;
  if (due !== undefined) return due <= addDays(today, daysToNextWalk) ? 'due' : null;
  return clearOn(zone, said) ? 'not known' : 'never looked at';
};

/**
 * The watch list of a walk: what was not sure last time, what is due before the next walk, and what was coated and never looked at;
 * a zone on whose coating the green is back is no longer watched. `said` may be missing: the list stands at once and is told by looks
 * and coatings alone until the holds are worked out.
 */
export const walkList = (
  works: readonly WorkPassed[],
  said: ReadonlyMap<string, HoldSaid>,
  today: string,
): WalkList => {
  const all = works.map((work) => {
    const zones = work.zones.map((zone): ZoneOnList => {
      const own = said.get(zone.zone.thing);
      return {
        ...zone,
        why: whyOf(zone, own, today),
        due: own?.advice?.nextLook?.day ?? null,
        clearOn: clearOn(zone, own),
      };
    });
    return { work, listed: zones.filter(({ why }) => why !== null), rest: zones.filter(({ why }) => why === null) };
  });
  const listed = all.flatMap((row) => row.listed);
  const looked = listed.filter(({ why }) => why === 'today').length;
  const later = all
    .flatMap((row) => [...row.listed, ...row.rest])
    .flatMap(({ why, due }) => (due !== null && due > today && why !== 'today' ? [due] : []));
  return { works: all, looked, left: listed.length - looked, nextDue: later.sort()[0] ?? null };
};
