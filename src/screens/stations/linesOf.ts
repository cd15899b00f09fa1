/** A text broken at its words into at most so many lines of at most so many letters; what does not go in ends in an ellipsis. */
export const linesOf = (text: string, letters: number, most: number): string[] => {
  const lines: string[] = [];
  const words = text
    .split(/\s+/)
    .filter(Boolean)
    .flatMap((word) => pieces(word, letters));
  for (const word of words) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length <= most) return lines;
  const end = lines[most - 1] ?? '';
  return [...lines.slice(0, most - 1), `${end.slice(0, letters - 1).trimEnd()}…`];
};

/** A word longer than a line, in pieces that fit. */
const pieces = (word: string, letters: number): string[] =>
  word.length <= letters ? [word] : [word.slice(0, letters), ...pieces(word.slice(letters), letters)];
