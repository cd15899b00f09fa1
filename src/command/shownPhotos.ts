import { againstAgreed, againstLastYear, type Compared, isCompared, meanReading, spotsOf } from '../engine/colour';
import { isRefused, measuredAgain } from '../engine/photo';
import { asThing, type Current, type KindOfThing, type SculptureRecord, type Thing } from '../engine/record';
import type { Say } from './said';

/** What was measured on photos of a work and read by an instrument: worked out again from what was touched and typed. */
export const shownPhotos = (record: SculptureRecord, currents: readonly Current[], said: Say) => {
  const of = <K extends KindOfThing>(kind: K): Thing<K>[] =>
    currents.flatMap((current) => (current.gone ? [] : (asThing(current, kind) ?? [])));
  const photos = new Map(of('photo').map((photo) => [photo.thing, photo.body]));
  return {
    photos: photos.size,
    stations: of('station').map(({ thing, body }) => ({ station: thing, letter: body.letter, aim: body.aim })),
    measured: of('measure').map((measure) => shownMeasure(measure, photos.get(measure.body.photo), said)),
    colours: shownColours(record, of('reading'), of('agreedColour'), of('sentinel'), said),
  };
};

const shownMeasure = (
  { thing, body }: Thing<'measure'>,
  photo: Thing<'photo'>['body'] | undefined,
  said: Say,
): object => {
  const { about, kind, date, coverage } = body;
  const what = { measure: thing, photo: body.photo, about, kind, date, method: coverage.method };
  const size = photo?.width && photo.height ? { width: photo.width, height: photo.height } : undefined;
  const told = size ? measuredAgain(body, size) : { refused: [] };
  if (isRefused(told)) return { ...what, value: null, low: null, high: null, reasons: said(told.refused) };
  return { ...what, value: told.value, low: told.low, high: told.high, reasons: said(told.reasons) };
};

const shownColours = (
  record: SculptureRecord,
  readings: readonly Thing<'reading'>[],
  agreed: readonly Thing<'agreedColour'>[],
  sentinels: readonly Thing<'sentinel'>[],
  said: Say,
) =>
  spotsOf(readings).flatMap((spot) =>
    spot.readings.map((reading) => {
      const zone = reading.body.zone ?? sentinels.find(({ thing }) => thing === reading.body.sentinel)?.body.zone;
      const held = againstAgreed(reading, agreed, zone);
      const before = againstLastYear(reading, spot.readings, record.treatments, zone);
      const { n, mean, spread } = meanReading(reading.body.values);
      return {
        ...{ reading: reading.thing, about: spot.about ?? null, position: spot.position, date: reading.body.date },
        ...{ n, mean, spread },
        toAgreed: held && { agreed: held.agreed.thing, ...shownDifference(held.compared, said) },
        toEarlier: before && { earlier: before.earlier.thing, ...shownDifference(before.compared, said) },
      };
    }),
  );

const shownDifference = (compared: Compared, said: Say) =>
  isCompared(compared)
    ? { ...compared, reasons: said(compared.reasons) }
    : { value: null, low: null, high: null, reasons: said(compared.refused) };
