/** Why a row or a file brought in is not taken as it stands. The sentences live in src/words/en/reasonsOfBring.ts. */
export const bringReasons = {
  'bring: empty list': [],
} as const satisfies Record<string, readonly string[]>;

export type BringReason = keyof typeof bringReasons;
