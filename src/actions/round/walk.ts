import { type SculptureRecord, type Thing, visitOf, zonesAt } from '../../engine/record';

type VisitState = Thing<'visit'>['body']['state'];

/** Where a zone stands in the walk: one of the four answers, begun and not left, or not yet come to. */
export type ZoneStanding = VisitState | 'begun' | 'not yet';

export interface ZoneOnWalk {
  readonly zone: Thing<'zone'>;
  readonly standing: ZoneStanding;
}

/** The zones of a round in walking order, each with where it stands. `begun` tells whether a zone has touches not yet written. */
export const walkOf = (
  record: SculptureRecord,
  round: Thing<'round'>,
  begun: (zone: string) => boolean,
): readonly ZoneOnWalk[] =>
  zonesAt(record, round.body.date).map((zone) => ({
    zone,
    standing: begun(zone.thing) ? 'begun' : (visitOf(record, round.thing, zone.thing)?.body.state ?? 'not yet'),
  }));

const unanswered = ({ standing }: ZoneOnWalk): boolean => standing === 'begun' || standing === 'not yet';

/** Where to go on: the next zone without an answer after this one, then from the start again; undefined when all have one. */
export const nextOnWalk = (walk: readonly ZoneOnWalk[], after: string | undefined): string | undefined => {
  const at = walk.findIndex(({ zone }) => zone.thing === after);
  const ahead = [...walk.slice(at + 1), ...walk.slice(0, at + 1)];
  return ahead.find((z) => unanswered(z) && z.zone.thing !== after)?.zone.thing;
};

export const answeredOnWalk = (walk: readonly ZoneOnWalk[]): number => walk.filter((z) => !unanswered(z)).length;
