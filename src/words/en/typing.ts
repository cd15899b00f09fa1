import { spoken } from '../tongue';

/** What stands under a field in which a number was typed. */
export const typing = spoken('typing', 'typing', {
  readAs: (value: string) => `Read as ${value}.`,
  readAsNot: (value: string, other: string) => `Read as ${value}, not as ${other}.`,
  notNumber: 'This cannot be read as a number here. Write it like 1500 or 2.5.',
});
