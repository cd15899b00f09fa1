import type { Outline, Size } from '../../engine/photo';
import { findingsOf, type SculptureRecord, type Thing, visitOf } from '../../engine/record';
import { kindOf } from '../../engine/trade';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { recordOf } from '../questions/records';
import { thingsWithin } from '../theThing';
import { asThingOfKind } from './asThingOfKind';
import { notesVersion } from './measureAtHand';
import { type MeasuringPlace, measuringPlace } from './measuringPlace';
import { type PartFrom, partOnPhoto } from './partOnPhoto';

/** All a screen needs to measure a zone or a sentinel square on a photo. */
export interface Measuring {
  readonly photo: Thing<'photo'>;
  readonly sculpture: Thing<'sculpture'>;
  readonly zone: Thing<'zone'>;
  readonly sentinel: Thing<'sentinel'> | null;
  /** Null where the size of the photo is not known: nothing can be measured on it. */
  readonly size: Size | null;
  /** The part of the photo the zone takes up, and how that is known; null where it has to be drawn first. */
  readonly part: { readonly outline: Outline; readonly from: PartFrom } | null;
  /** Figures measured on this photo of this zone or square, all kinds and ways. */
  readonly measures: readonly Thing<'measure'>[];
  /** The round the photo is held against: its own, or else the last that saw the zone. */
  readonly round: Thing<'round'> | null;
  /** What the eye said in that round of kinds told by their share. */
  readonly byEye: readonly Thing<'finding'>[];
  /** Kinds told by their share that were ever found or measured here, those of the round first. */
  readonly kinds: readonly string[];
  readonly place: MeasuringPlace;
}

/** Null where the photo, or what is to be measured on it, is not on this device. */
export const measuringOf = (desk: Desk, photo: string, about: string): Question<Measuring | null> =>
  ask(
    desk,
    `measuring ${photo} ${about}`,
    () => `${notesVersion(desk, 'place')} ${desk.store.changes()}`,
    () => readMeasuring(desk, photo, about),
  );

const readMeasuring = async (desk: Desk, photoName: string, about: string): Promise<Measuring | null> => {
  const photo = await asThingOfKind(desk, 'photo', photoName);
  const sentinel = (await asThingOfKind(desk, 'sentinel', about)) ?? null;
  const zone = await asThingOfKind(desk, 'zone', sentinel?.body.zone ?? about);
  if (!photo || !zone || photo.body.sculpture !== zone.body.sculpture) return null;
  const record = await recordOf(desk, photo.body.sculpture);
  const { width, height } = photo.body;
  const all = await thingsWithin(desk, 'measure', photo.body.sculpture);
  const measures = all.filter(({ body }) => body.photo === photoName && body.about === about);
  const place = await measuringPlace(desk, photoName, about);
  const round = roundFor(record, photo, zone.thing);
  const shares = (name: string) =>
    findingsOf(record, name, zone.thing).filter(({ body }) => body.coverage && isShare(body.kind));
  const byEye = round ? shares(round.thing) : [];
  const earlier = record.rounds.toReversed().flatMap(({ thing }) => shares(thing));
  return {
    photo,
    sculpture: record.sculpture,
    zone,
    sentinel,
    size: width === undefined || height === undefined ? null : { width, height },
    part: await partOnPhoto(desk, { photo, about, zone: zone.thing, measures, drawn: place.drawn?.rings }),
    measures,
    round: round ?? null,
    byEye,
    kinds: [...new Set([...byEye, ...measures, ...earlier].map(({ body }) => body.kind))],
    place,
  };
};

const isShare = (kind: string): boolean => kindOf(kind)?.measure === 'area';

const roundFor = (record: SculptureRecord, { body }: Thing<'photo'>, zone: string): Thing<'round'> | undefined =>
  record.rounds.find(({ thing }) => thing === body.round) ??
  record.rounds.findLast(({ thing }) => visitOf(record, thing, zone) !== undefined);
