import type { ReadingFields } from '../../actions';
import type { ReadingConditions, Spot } from '../../engine/colour';
import type { BodyOf, Thing } from '../../engine/record';
import { placingsText, typedPlacings } from './typedPlacings';
import { noWay, type WayText, wayOf, wayTextOf } from './wayOfReading';

/** What the sheet of a reading holds. */
export interface ReadingDraft {
  /** Zone or square; '' is the whole work. */
  readonly about: string;
  readonly position: string;
  readonly day: string;
  readonly placings: string;
  /** Read the same way as last time, or not; undefined: not said yet. */
  readonly sameWay: boolean | undefined;
  readonly way: WayText;
  readonly instrument: string;
  readonly calibration: string;
  readonly surface: BodyOf<'reading'>['surface'];
  readonly note: string;
}

/** A new one; where the last was made today, the same instrument is at hand and set as it was. */
export const newDraft = (today: string, spot: Spot | undefined, last: Thing<'reading'> | undefined): ReadingDraft => ({
  about: spot?.about ?? '',
  position: spot?.position ?? '',
  day: today,
  placings: '',
  sameWay: last ? (last.body.date === today ? true : undefined) : false,
  way: noWay,
  instrument: '',
  calibration: last?.body.date === today ? (last.body.calibration ?? '') : '',
  surface: last?.body.date === today ? last.body.surface : undefined,
  note: '',
});

export const draftOf = ({ body }: Thing<'reading'>): ReadingDraft => ({
  about: body.sentinel ?? body.zone ?? '',
  position: body.position ?? '',
  day: body.date,
  placings: placingsText(body.values),
  sameWay: false,
  way: wayTextOf(body),
  instrument: body.instrument ?? '',
  calibration: body.calibration ?? '',
  surface: body.surface,
  note: body.note ?? '',
});

/** How it was read, as far as it is said. */
export const conditionsOf = (
  draft: ReadingDraft,
  last: Thing<'reading'> | undefined,
): (ReadingConditions & { readonly instrument?: string | undefined }) | undefined => {
  if (draft.sameWay === undefined) return undefined;
  const instrument = draft.instrument.trim() || undefined;
  const way = draft.sameWay && last ? last.body : wayOf(draft.way);
  return way && { ...way, instrument: draft.sameWay ? last?.body.instrument : instrument, surface: draft.surface };
};

/** What the deed takes, or undefined while something is missing or wrong. `zone`: that of the place. */
export const readingFields = (
  draft: ReadingDraft,
  last: Thing<'reading'> | undefined,
  zone: string | undefined,
): ReadingFields | undefined => {
  const way = conditionsOf(draft, last);
  const { values, wrong } = typedPlacings(draft.placings);
  if (!way || wrong || values.length === 0 || !draft.day) return undefined;
  const said = (text: string) => text.trim() || undefined;
  return {
    date: draft.day,
    values: values.map((value) => ({ ...value })),
    illuminant: way.illuminant,
    observer: way.observer,
    geometry: way.geometry,
    aperture: way.aperture,
    surface: way.surface,
    instrument: way.instrument,
    zone,
    sentinel: draft.about.startsWith('sentinel/') ? draft.about : undefined,
    position: said(draft.position),
    calibration: said(draft.calibration),
    note: said(draft.note),
  };
};
