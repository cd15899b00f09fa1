/** A to Z, then AA, AB ...: the walking order a person calls out. */
export const letterAt = (index: number): string => {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterAt(Math.floor(index / 26) - 1) + last;
};

/** The first letter no zone of the work has ever had: an ended zone keeps its own in the history. */
export const nextLetter = (taken: ReadonlySet<string>): string => {
  let index = 0;
  while (taken.has(letterAt(index))) index++;
  return letterAt(index);
};
