/** The five steps of the index scale, sound to poor. The edges at 80 and 55 are those of the condition classes. */
export type IndexLevel = 1 | 2 | 3 | 4 | 5;

/** The least index of each step but the last. */
export const levelFloors: readonly (readonly [number, IndexLevel])[] = [
  [90, 1],
  [80, 2],
  [55, 3],
  [35, 4],
];

/** Level of an index between 0 and 100. */
export const levelOf = (index: number): IndexLevel => levelFloors.find(([floor]) => index >= floor)?.[1] ?? 5;
