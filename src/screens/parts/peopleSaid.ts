/** Somebody by role; the name may be left out. A type and not an interface: it may then stand in a body, which leaves room for more. */
export type PersonSaid = {
  readonly role: string;
  readonly name?: string | undefined;
};

/** Somebody who signed, and on which day. */
export type SignedSaid = PersonSaid & { readonly on: string };

/** Somebody who was at work, with the hours as typed. */
export type HoursSaid = PersonSaid & { readonly hours: string };

const isEmpty = ({ role, name = '' }: PersonSaid): boolean => role.trim() === '' && name.trim() === '';

/** What is kept of the rows of a form: empty rows fall away, and a name left out is not there. */
export const peopleKept = <T extends PersonSaid>(rows: readonly T[]): T[] =>
  rows
    .filter((row) => !isEmpty(row))
    .map((row) => {
      const { name, ...rest } = { ...row, role: row.role.trim() };
      const given = name?.trim();
      return (given ? { ...rest, name: given } : rest) as T;
    });

/** Whether every row that holds something says in what role, and on which day where there is a day. */
export const peopleWhole = (rows: readonly (PersonSaid | SignedSaid)[]): boolean =>
  rows.every((row) => isEmpty(row) || (row.role.trim() !== '' && (!('on' in row) || row.on !== '')));

export const isStarted = (row: PersonSaid): boolean => !isEmpty(row);
