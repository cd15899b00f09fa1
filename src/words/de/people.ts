import type { people as english } from '../en/people';
import type { Same } from '../tongue';

/** Words of the entries that name people: who was asked, who signed. */
export const people: Same<typeof english> = {
  role: 'Funktion',
  roleHint: 'Restaurator, Künstlernachlass, Leitung der Gartenpflege …',
  name: 'Name',
  hours: 'Stunden',
  hoursWrong: 'Eine Zahl von Stunden: 2,5.',
  on: 'Unterschrieben am',
  add: 'Person hinzufügen',
  sign: 'Unterschrift hinzufügen',
  remove: (n: number, role: string) => (role === '' ? `Person ${n} entfernen` : `${role} entfernen`),
  row: (n: number) => `Person ${n}`,
  roleMissing: 'Sagen Sie, in welcher Funktion: Eine Funktion kann mitgegeben, ein Name gelöscht werden.',
  dayMissing: 'Sagen Sie, an welchem Tag.',
};
