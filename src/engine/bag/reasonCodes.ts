/** Why a bag is not taken, with the parameters its sentence may use. The sentences live in src/words/en/reasonsOfBag.ts. */
export const bagReasons = {
  'bag: not a bag': [],
} as const satisfies Record<string, readonly string[]>;

export type BagReason = keyof typeof bagReasons;
