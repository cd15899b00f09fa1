import { readTimeOfDay } from '../../engine/numerals';
import type { BodyOf } from '../../engine/record';
import type { PersonSaid } from '../parts/peopleSaid';

type Body = BodyOf<'incident'>;

/** What the report form holds. */
export interface IncidentText {
  /** Never taken as said: it is the first thing asked. */
  readonly danger: Body['danger'] | undefined;
  readonly sort: string;
  /** Empty: the garden. */
  readonly work: string;
  readonly zones: readonly string[];
  readonly day: string;
  readonly time: string;
  readonly what: string;
  readonly done: string;
  readonly told: readonly PersonSaid[];
  readonly photos: readonly string[];
}

export const incidentText = (body: Body | undefined, today: string): IncidentText => ({
  danger: body?.danger,
  sort: body?.sort ?? 'storm',
  work: body?.sculpture ?? '',
  zones: body?.zones ?? [],
  day: body?.date ?? today,
  time: body?.time ?? '',
  what: body?.what ?? '',
  done: body?.done ?? '',
  told: body?.told ?? [],
  photos: body?.photos ?? [],
});

/** A time of the day, or nothing. */
export const timeRight = (time: string): boolean => time.trim() === '' || readTimeOfDay(time) !== undefined;
