import type { ReadingConditions } from '../../engine/colour';
import type { BodyOf } from '../../engine/record';
import { number, numberTyped, typedNumber, w } from '../../words';

const words = w.colour.way;
type Reading = BodyOf<'reading'>;

/** How it was read, as it is typed; what is not said yet is undefined or empty. */
export interface WayText {
  readonly illuminant: Reading['illuminant'] | undefined;
  readonly observer: Reading['observer'] | undefined;
  readonly geometry: Reading['geometry'] | undefined;
  readonly aperture: string;
}

export const noWay: WayText = { illuminant: undefined, observer: undefined, geometry: undefined, aperture: '' };

export const wayTextOf = ({ illuminant, observer, geometry, aperture }: ReadingConditions): WayText => ({
  illuminant,
  observer,
  geometry,
  aperture: aperture === undefined ? '' : numberTyped(aperture),
});

/** The conditions, or undefined while one is missing or the opening is no number. */
export const wayOf = ({ illuminant, observer, geometry, aperture }: WayText): ReadingConditions | undefined => {
  const mm = typedNumber(aperture);
  if (!illuminant || !observer || !geometry || (aperture.trim() && mm === undefined)) return undefined;
  return { illuminant, observer, geometry, aperture: mm };
};

/** "D65 · 10° · d/8, shine included · 8 mm · dry": what is known, in the order it is asked. */
export const wayInWords = (body: ReadingConditions & { readonly instrument?: string | undefined }): string =>
  [
    body.illuminant,
    words.observerName(body.observer),
    words.geometries[body.geometry].name,
    body.aperture === undefined ? '' : words.mm(number(body.aperture, 2)),
    body.surface ? words.surfaces[body.surface] : '',
    body.instrument ?? '',
  ]
    .filter(Boolean)
    .join(' · ');

const illuminants = Object.keys(words.illuminants) as (keyof typeof words.illuminants)[];
const observers = ['10', '2'] as const;
const geometries = Object.keys(words.geometries) as (keyof typeof words.geometries)[];

/** What there is to choose from. */
export const wayOptions = {
  illuminants: illuminants.map((value) => ({ value, label: value, detail: words.illuminants[value] })),
  observers: observers.map((value) => ({
    value,
    label: words.observerName(value),
    detail: words.observers[value],
  })),
  geometries: geometries.map((value) => ({
    value,
    label: words.geometries[value].name,
    detail: words.geometries[value].what,
  })),
};
