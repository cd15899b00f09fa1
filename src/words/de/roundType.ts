/** Names of sorts of round that are nouns, and keep their capital inside a sentence. */
const nouns = ['Herbst', 'Vorfall'];

/** The sort of a round as it stands in brackets: "Rundgang vom 12. Mai 2026 (jährlich)". */
export const roundType = (type: string): string =>
  nouns.some((noun) => type.startsWith(noun)) ? type : `${type.charAt(0).toLowerCase()}${type.slice(1)}`;
