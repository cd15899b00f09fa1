import { roundsCountedAs, type SculptureRecord, type Thing, zonesAt } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { recordOf } from '../questions/records';
import { thingsWithin } from '../theThing';

/** One photo a round asks for: from a station, of a sentinel square, or of a zone as a whole. */
export interface Shot {
  readonly of: 'station' | 'sentinel' | 'zone';
  readonly thing: string;
  /** Those of the round, also of rounds said to be one with it, in the order they were kept. */
  readonly photos: readonly Thing<'photo'>[];
  /** The last one before the round. */
  readonly before: Thing<'photo'> | undefined;
}

export interface ShotList {
  readonly sculpture: Thing<'sculpture'>;
  /** Latest first. */
  readonly rounds: readonly Thing<'round'>[];
  /** The one asked for; else the one under way, else the last; null before the first. */
  readonly round: Thing<'round'> | null;
  readonly stations: readonly Thing<'station'>[];
  readonly sentinels: readonly Thing<'sentinel'>[];
  /** As they stand on the day of the round, today where there is none. */
  readonly zones: readonly Thing<'zone'>[];
  readonly zonesToday: readonly Thing<'zone'>[];
  /** Stations in walking order, then squares (best first), then zones in walking order. */
  readonly shots: readonly Shot[];
}

/** What a round of a work asks to be photographed, and which of it is there. Null where the work is not here. */
export const shotList = (desk: Desk, sculpture: string, round?: string): Question<ShotList | null> =>
  ask(
    desk,
    `shots of ${sculpture} in ${round ?? 'its round'}`,
    () => desk.store.changes(),
    async () => {
      if ((await desk.store.current(sculpture))?.gone !== false) return null;
      const [record, photos, rounds, stations, sentinels] = await Promise.all([
        recordOf(desk, sculpture),
        thingsWithin(desk, 'photo', sculpture),
        thingsWithin(desk, 'round', sculpture),
        thingsWithin(desk, 'station', sculpture),
        thingsWithin(desk, 'sentinel', sculpture),
      ]);
      return listed({ record, photos, countedAs: roundsCountedAs(rounds), stations, sentinels }, round, desk.today());
    },
  );

interface Pieces {
  readonly record: SculptureRecord;
  readonly photos: readonly Thing<'photo'>[];
  readonly countedAs: ReadonlyMap<string, string>;
  readonly stations: readonly Thing<'station'>[];
  readonly sentinels: readonly Thing<'sentinel'>[];
}

const listed = (pieces: Pieces, asked: string | undefined, today: string): ShotList => {
  const { record, countedAs } = pieces;
  const rounds = record.rounds.toReversed();
  const root = asked && (countedAs.get(asked) ?? asked);
  const round =
    rounds.find(({ thing }) => thing === root) ?? rounds.find(({ body }) => !body.ended) ?? rounds[0] ?? null;
  const stations = [...pieces.stations].sort((a, b) => a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1));
  const sentinels = [...pieces.sentinels].sort(
    (a, b) => (a.body.which === b.body.which ? 0 : a.body.which === 'best' ? -1 : 1) || (a.thing < b.thing ? -1 : 1),
  );
  const zones = zonesAt(record, round?.body.date ?? today);
  const shot = shotIn(pieces, round);
  return {
    sculpture: record.sculpture,
    rounds,
    round,
    stations,
    sentinels,
    zones,
    zonesToday: zonesAt(record, today),
    shots: [
      ...stations.map(({ thing }) => shot('station', thing)),
      ...sentinels.map(({ thing }) => shot('sentinel', thing)),
      ...zones.map(({ thing }) => shot('zone', thing)),
    ],
  };
};

const shotIn = ({ record, photos, countedAs }: Pieces, round: Thing<'round'> | null) => {
  const rootOf = (photo: Thing<'photo'>): string | undefined =>
    photo.body.round && (countedAs.get(photo.body.round) ?? photo.body.round);
  const dayOf = (photo: Thing<'photo'>): string =>
    record.rounds.find(({ thing }) => thing === rootOf(photo))?.body.date ??
    (photo.body.taken ?? photo.lead.at).slice(0, 10);
  const inOrder = photos.toSorted((a, b) => (a.lead.at < b.lead.at ? -1 : a.lead.at > b.lead.at ? 1 : 0));
  const ofVisit = (zone: string): ReadonlySet<string> =>
    new Set(
      record.visits.find(({ body }) => body.round === round?.thing && body.zone === zone)?.body.photos as
        | string[]
        | undefined,
    );
  return (of: Shot['of'], thing: string): Shot => {
    const visited = of === 'zone' ? ofVisit(thing) : new Set<string>();
    const own = inOrder.filter(
      (photo) =>
        visited.has(photo.thing) || (photo.body[of] === thing && (of !== 'zone' || photo.body.role === 'zone')),
    );
    const inRound = own.filter((photo) => visited.has(photo.thing) || (round && rootOf(photo) === round.thing));
    const before = own
      .filter((photo) => !inRound.includes(photo) && (!round || dayOf(photo) <= round.body.date))
      .toSorted((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0));
    return { of, thing, photos: inRound, before: before.at(-1) };
  };
};
