import type { Reason } from '../../engine/record';

/** Why a deed of the round is refused, with the names of the parameters. The sentences live in src/words/. */
export const roundRefusalCodes = {
  'round: not here': [],
  'round: sculpture has no zones': [],
  'round: zone not here': [],
  'round: finding not finished': ['kind', 'question'],
  'round: not looked, yet something recorded': ['kind'],
  'round: nothing found, yet something recorded': ['kind'],
  'round: earlier finding not answered': ['kind', 'n'],
  'round: no earlier round': [],
  'round: stop word is not carried': ['kind'],
  'round: nothing said yet': [],
  'round: not to be rated again': [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What the undo button names. `zone` and `round` say where to go after the deed was taken back. */
export const roundDeedCodes = {
  'deed: round started': ['type', 'date'],
  'deed: zone recorded': ['letter', 'state', 'round', 'zone'],
  'deed: zone asked again': ['letter', 'round', 'zone'],
  'deed: asking again skipped': ['round'],
  'deed: round closed': ['date', 'round'],
  'deed: round opened again': ['date', 'round'],
  'deed: looked': ['letter', 'result'],
  'deed: looked, all clear': ['count'],
  'deed: photo added to a look': ['letter'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

type Params<T, C extends keyof T> = {
  readonly [P in T[C] extends readonly (infer S extends string)[] ? S : never]: string | number;
};

export const roundRefusal = <C extends keyof typeof roundRefusalCodes>(
  code: C,
  params: Params<typeof roundRefusalCodes, C>,
): Reason => ({ code, params });
export const roundDeed = <C extends keyof typeof roundDeedCodes>(
  code: C,
  params: Params<typeof roundDeedCodes, C>,
): Reason => ({ code, params });
