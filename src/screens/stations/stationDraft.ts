import type { StationFields } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { fieldText, keptFrom, typedNumber } from '../../words';

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

/** A new one asks for open shade and a dry surface, as repeat photos of bronze do best. Common practice, no source. */
export const draftOf = (station: BodyOf<'station'> | undefined): StationDraft => ({
  aim: station?.aim ?? '',
  mark: station?.mark ?? '',
  letter: station?.letter ?? '',
  bearing: String(station?.bearing ?? ''),
  distance: fieldText('length', station?.distance),
  height: fieldText('length', station?.height),
  lens: String(station?.lens ?? ''),
  format: station?.format ?? '',
  light: station ? (station.light ?? '') : 'open shade',
  wet: station ? (station.wet ?? '') : 'dry',
  note: station?.note ?? '',
});

export const numberWrong = (typed: string): boolean => typed.trim() !== '' && typedNumber(typed) === undefined;

/** What the deed is given, or undefined while a number is none. */
export const fieldsOf = (draft: StationDraft): StationFields | undefined => {
  const { bearing, distance, height, lens } = draft;
  if ([bearing, distance, height, lens].some(numberWrong)) return undefined;
  const letter = draft.letter.trim();
  return {
    aim: draft.aim.trim(),
    ...(letter ? { letter } : {}),
    mark: draft.mark.trim() || undefined,
    bearing: typedNumber(bearing),
    distance: keptFrom('length', typedNumber(distance)),
    height: keptFrom('length', typedNumber(height)),
    lens: typedNumber(lens),
    format: draft.format || undefined,
    light: draft.light || undefined,
    wet: draft.wet || undefined,
    note: draft.note.trim() || undefined,
  };
};
