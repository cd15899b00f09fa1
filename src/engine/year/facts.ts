import type { NeedOf } from '../condition';
import type { Advice, ZoneHolds } from '../hold';
import { areaOn, dayRange, endOf, type SculptureRecord, type Thing } from '../record';
import { treatmentOf } from '../trade';
import { yearNumbers } from './numbers';

/** What is known of a work when its year is planned. */
export interface WorkFacts {
  readonly work: string;
  /** Living zones in walking order, with their areas, m2. */
  readonly zones: readonly { readonly zone: Thing<'zone'>; readonly m2: number }[];
  readonly need: Pick<NeedOf, 'score' | 'classes'> | null;
  /** Days of its rounds, in order. */
  readonly rounds: readonly string[];
  /** Last days of the coatings of most of the work, in order. */
  readonly coatings: readonly string[];
  readonly advice: readonly Advice[];
  readonly holds: readonly ZoneHolds[];
  /** Where it is, if it is not here. */
  readonly away: Thing<'move'> | undefined;
}

/** Not yet back on a day: on loan to others, or moved off with a day to come back. */
export const isAway = ({ body }: Thing<'move'>, today: string): boolean =>
  (body.sort === 'loan out' || (body.sort === 'move' && body.backDue !== undefined)) &&
  body.left <= today &&
  (body.back === undefined || body.back > today);

/** `worked` is what was worked out for the work; `moves` are its moves. */
export const factsOf = (
  worked: {
    readonly record: SculptureRecord;
    readonly need: Pick<NeedOf, 'score' | 'classes'> | null;
    readonly holds: readonly ZoneHolds[];
    readonly advice: readonly Advice[];
  },
  moves: readonly Thing<'move'>[],
  today: string,
): WorkFacts => {
  const { record, need, holds, advice } = worked;
  const zones = record.zones
    .filter((zone) => today < (endOf(zone) ?? '9999'))
    .map((zone) => ({ zone, m2: areaOn(zone, today).m2 }));
  const whole = zones.reduce((sum, { m2 }) => sum + m2, 0);
  const covered = (names: readonly string[]): number =>
    names.length === 0
      ? whole
      : zones.filter(({ zone }) => names.includes(zone.thing)).reduce((sum, { m2 }) => sum + m2, 0);
  const coatings = record.treatments
    .filter(({ body }) => treatmentOf(body.type)?.coats === true)
    .filter(({ body }) => covered(body.zones) >= yearNumbers.mostOfWork.value * whole)
    .map(({ body }) => dayRange(body.date).to)
    .filter((day) => day <= today)
    .sort();
  return {
    work: record.sculpture.thing,
    zones,
    need,
    rounds: record.rounds.map(({ body }) => body.date).filter((day) => day <= today),
    coatings: [...new Set(coatings)],
    advice,
    holds,
    away: moves.find((move) => move.body.sculpture === record.sculpture.thing && isAway(move, today)),
  };
};
