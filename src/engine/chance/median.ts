/** The middle of a list in order that is not empty; of two in the middle, the mean. */
export const median = (ordered: readonly number[]): number => {
  const half = Math.floor(ordered.length / 2);
  const upper = ordered[half] as number;
  return ordered.length % 2 === 1 ? upper : ((ordered[half - 1] as number) + upper) / 2;
};
