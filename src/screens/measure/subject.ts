import { kindOf } from '../../engine/trade';
import { midSentence, w } from '../../words';

/** True where the kind is counted as green: its buttons say so. */
export const isGreen = (kind: string): boolean => kindOf(kind)?.countsAs === 'green';

/** A kind as it stands within a sentence. */
export const subjectOf = (kind: string): string => {
  const name = kindOf(kind)?.name ?? kind;
  return isGreen(kind) ? w.measure.green : midSentence(name);
};

/** A kind by its name, or its code where this version does not know it. */
export const kindName = (kind: string): string => kindOf(kind)?.name ?? kind;

/** What the two sorts of pixels are called. */
export const sortsOf = (kind: string) => w.measure.sorts[isGreen(kind) ? 'green' : 'other'];
