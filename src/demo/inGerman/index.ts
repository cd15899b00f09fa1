import { worksInGerman } from './works';
import { yearsInGerman } from './years';

/**
 * The invented garden in German: what its people wrote, name for name and sentence for sentence.
 * A text that stands the same in both is not here.
 */
export const inGerman: Readonly<Record<string, string>> = { ...worksInGerman, ...yearsInGerman };
