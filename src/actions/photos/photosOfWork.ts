import { roundsCountedAs, type SculptureRecord, type Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { recordOf } from '../questions/records';
import { thingsWithin } from '../theThing';

/** A photo with the places it belongs to, said of itself or by what shows it. */
export interface PhotoOfWork {
  readonly photo: Thing<'photo'>;
  /** Rounds said to be one count as one. */
  readonly round: string | undefined;
  readonly zone: string | undefined;
  /** The day it was taken, by the camera; else of its round; else the day it was kept. YYYY-MM-DD. */
  readonly day: string;
}

export interface PhotosOfWork {
  readonly sculpture: Thing<'sculpture'>;
  /** Newest first. */
  readonly photos: readonly PhotoOfWork[];
  /** Latest first. */
  readonly rounds: readonly Thing<'round'>[];
  readonly stations: readonly Thing<'station'>[];
  readonly sentinels: readonly Thing<'sentinel'>[];
  /** In walking order, ended ones too. */
  readonly zones: readonly Thing<'zone'>[];
}

/** All photos of a work, and all a photo of it can belong to. Null where the work is not here. */
export const photosOfWork = (desk: Desk, sculpture: string): Question<PhotosOfWork | null> =>
  ask(
    desk,
    `photos and their places ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    () => photosOf(desk, sculpture),
  );

/** The same, once, for another question. */
export const photosOf = async (desk: Desk, sculpture: string): Promise<PhotosOfWork | null> => {
  if ((await desk.store.current(sculpture))?.gone !== false) return null;
  const [record, photos, rounds, stations, sentinels] = await Promise.all([
    recordOf(desk, sculpture),
    thingsWithin(desk, 'photo', sculpture),
    thingsWithin(desk, 'round', sculpture),
    thingsWithin(desk, 'station', sculpture),
    thingsWithin(desk, 'sentinel', sculpture),
  ]);
  const shownBy = showing(record);
  const countedAs = roundsCountedAs(rounds);
  const dates = new Map(record.rounds.map(({ thing, body }) => [thing, body.date]));
  const placed = photos.map((photo): PhotoOfWork => {
    const shown = shownBy.get(photo.thing);
    const said = photo.body.round ?? shown?.round;
    const round = said && (countedAs.get(said) ?? said);
    const day = photo.body.taken?.slice(0, 10) ?? (round && dates.get(round)) ?? photo.lead.at.slice(0, 10);
    return { photo, round, zone: photo.body.zone ?? shown?.zone, day };
  });
  return {
    sculpture: record.sculpture,
    photos: placed.sort((a, b) => newerFirst(keyOf(a), keyOf(b))),
    rounds: record.rounds.toReversed(),
    stations: stations.sort((a, b) => a.body.order - b.body.order),
    sentinels,
    zones: record.zones,
  };
};

const keyOf = ({ day, photo }: PhotoOfWork): string =>
  `${day} ${photo.body.taken ?? ''} ${photo.lead.at} ${photo.thing}`;
const newerFirst = (a: string, b: string): number => (a < b ? 1 : a > b ? -1 : 0);

/** Photos that findings, visits and looks show, with where those were. */
const showing = (record: SculptureRecord): ReadonlyMap<string, { readonly zone: string; readonly round?: string }> => {
  const shown = new Map<string, { zone: string; round?: string }>();
  const said = [...record.visits, ...record.findings, ...record.looks];
  for (const { body } of said)
    for (const photo of body.photos ?? [])
      shown.set(photo, { zone: body.zone, ...('round' in body ? { round: String(body.round) } : {}) });
  return shown;
};
