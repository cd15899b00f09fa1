import type { typing as english } from '../en/typing';
import type { Same } from '../tongue';

/** What stands under a field in which a number was typed. */
export const typing: Same<typeof english> = {
  readAs: (value: string) => `Gelesen als ${value}.`,
  readAsNot: (value: string, other: string) => `Gelesen als ${value}, nicht als ${other}.`,
  notNumber: 'Das lässt sich hier nicht als Zahl lesen. Schreiben Sie sie wie 1500 oder 2,5.',
};
