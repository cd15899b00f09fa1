/** Why a number or a class is what it is. The sentence for each code lives in src/words/. */
export interface Reason {
  readonly code: string;
  readonly params: Readonly<Record<string, string | number>>;
}

/** A number a person will act on: never bare. `low` and `high` are its 90 % range unless said otherwise. */
export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly reasons: readonly Reason[];
}
