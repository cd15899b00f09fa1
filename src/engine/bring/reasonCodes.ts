/** Why a row or a file brought in is not taken as it stands. The sentences live in src/words/en/reasonsOfBring.ts. */
export const bringReasons = {
  'bring: empty list': [],
  'bring: list too long': ['rows', 'most'],
  /** A quotation mark opened in this line of the file has no end: what follows cannot be told apart. */
  'bring: quote not closed': ['line'],
  'bring: work missing': [],
  'bring: work not known': ['text'],
  'bring: work unclear': ['text'],
  'bring: zone not known': ['text'],
  'bring: day missing': [],
  'bring: day order unclear': ['text'],
  'bring: day not a day': ['text'],
  /** What a spreadsheet shows where a cell of dates is not formatted as one. */
  'bring: day a bare number': ['text'],
  'bring: day ahead': ['text'],
  'bring: no year in it': ['text'],
  'bring: short year': ['text', 'year'],
  'bring: sort missing': [],
  'bring: sort not chosen': ['text'],
  'bring: coats not read': ['text'],
  'bring: text too long': ['column', 'most'],
  'bring: row twice': ['line'],
} as const satisfies Record<string, readonly string[]>;

export type BringReason = keyof typeof bringReasons;

type ParamsOf<C extends BringReason> = {
  readonly [P in (typeof bringReasons)[C] extends readonly (infer S extends string)[] ? S : never]: string | number;
};

export const bringReason = <C extends BringReason>(code: C, params: ParamsOf<C>) => ({ code, params });
