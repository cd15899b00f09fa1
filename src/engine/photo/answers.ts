/** Judgements of dots in the order the dots were laid, one letter each: y on the finding, n not, g glare, - not judged yet. */
export type Answers = string;

export interface Counted {
  readonly laid: number;
  readonly hits: number;
  /** Told as on the finding or not: what the share rests on. */
  readonly judged: number;
  readonly glare: number;
  readonly open: number;
}

export const counted = (answers: Answers): Counted => {
  const of = (letter: string): number => [...answers].filter((given) => given === letter).length;
  const hits = of('y');
  const glare = of('g');
  const judged = hits + of('n');
  return { laid: answers.length, hits, judged, glare, open: answers.length - judged - glare };
};
