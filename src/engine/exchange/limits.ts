/** What a survey file may hold at most. Chosen for this project: fifty works over twenty years stay well under each. */
export const limits = {
  /** Bytes of the whole file. */
  bytes: 150_000_000,
  /** Containers within each other. */
  depth: 32,
  /** Characters of one text. */
  text: 100_000,
  entries: 1_000_000,
  /** Problems listed before the rest is only counted. */
  problems: 20,
} as const;

export const format = 'patina-round-survey';
/** Version of the format this code writes: major.minor. A newer minor is read, a newer major is not. */
export const version = '1.0';
