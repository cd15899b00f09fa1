/**
 * Benjamini-Hochberg step-up: which of these p-values stand when the share of false ones among them is held to q.
 * The answer for each p is in the place it came in; equal p-values get equal answers.
 * Source: Benjamini & Hochberg 1995, J. R. Statist. Soc. B 57:289-300.
 */
export const benjaminiHochberg = (pValues: readonly number[], q: number): boolean[] => {
  const rising = [...pValues].sort((a, b) => a - b);
  let cut = Number.NEGATIVE_INFINITY;
  rising.forEach((p, i) => {
    if (p <= ((i + 1) * q) / rising.length) cut = p;
  });
  return pValues.map((p) => p <= cut);
};
