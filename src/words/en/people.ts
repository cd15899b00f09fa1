import { spoken } from '../tongue';

/** Words of the entries that name people: who was asked, who signed. */
export const people = spoken('people', 'people', {
  role: 'Role',
  roleHint: 'Conservator, artist’s estate, head of grounds …',
  name: 'Name',
  hours: 'Hours',
  hoursWrong: 'A number of hours: 2.5.',
  on: 'Signed on',
  add: 'Add a person',
  sign: 'Add a signature',
  remove: (n: number, role: string) => (role === '' ? `Take away person ${n}` : `Take away ${role}`),
  row: (n: number) => `Person ${n}`,
  roleMissing: 'Say in what role: a role may be carried along, a name can be erased.',
  dayMissing: 'Say on which day.',
});
