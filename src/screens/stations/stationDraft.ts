import type { StationFields } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { fieldText, numberTyped, type TypedAs, typedMeasure, typedNumber } from '../../words';

/** A station as it is being typed. */
export interface StationDraft {
  readonly aim: string;
  readonly mark: string;
  readonly letter: string;
  readonly bearing: string;
  readonly distance: string;
  readonly height: string;
  readonly lens: string;
  readonly format: 'portrait' | 'landscape' | '';
  readonly light: 'open shade' | 'overcast' | 'any' | '';
  readonly wet: 'dry' | 'wet' | '';
  readonly note: string;
}

const figureText = (value: number | undefined): string => (value === undefined ? '' : numberTyped(value));

/** A new one asks for open shade and a dry surface, as repeat photos of bronze do best. Common practice, no source. */
export const draftOf = (station: BodyOf<'station'> | undefined): StationDraft => ({
  aim: station?.aim ?? '',
  mark: station?.mark ?? '',
  letter: station?.letter ?? '',
  bearing: figureText(station?.bearing),
  distance: fieldText('length', station?.distance),
  height: fieldText('length', station?.height),
  lens: figureText(station?.lens),
  format: station?.format ?? '',
  light: station ? (station.light ?? '') : 'open shade',
  wet: station ? (station.wet ?? '') : 'dry',
  note: station?.note ?? '',
});

/** How each figure is read. */
export const figures = {
  bearing: 'number',
  distance: 'length',
  height: 'length',
  lens: 'number',
} as const satisfies Readonly<Record<string, TypedAs>>;
export type FigureOfStation = keyof typeof figures;

const figureOf = (key: FigureOfStation, typed: string): number | undefined =>
  figures[key] === 'number' ? typedNumber(typed) : typedMeasure(figures[key], typed);

export const numberWrong = (key: FigureOfStation, typed: string): boolean =>
  typed.trim() !== '' && figureOf(key, typed) === undefined;

/** What the deed is given, or undefined while a number is none. */
export const fieldsOf = (draft: StationDraft): StationFields | undefined => {
  const { bearing, distance, height, lens } = draft;
  if ((['bearing', 'distance', 'height', 'lens'] as const).some((key) => numberWrong(key, draft[key])))
    return undefined;
  const letter = draft.letter.trim();
  return {
    aim: draft.aim.trim(),
    ...(letter ? { letter } : {}),
    mark: draft.mark.trim() || undefined,
    bearing: typedNumber(bearing),
    distance: typedMeasure('length', distance),
    height: typedMeasure('length', height),
    lens: typedNumber(lens),
    format: draft.format || undefined,
    light: draft.light || undefined,
    wet: draft.wet || undefined,
    note: draft.note.trim() || undefined,
  };
};
