import type { Insights } from '../../actions';
import type { BodyOf, Thing } from '../../engine/record';
import { kindOf } from '../../engine/trade';
import { area, date, figure, fromTo, share, w } from '../../words';

const words = w.decisions.from;

/** A judgement of a round is a sentence of its own, so that it can be read in ten years. */
const ofRound = ({ need, record }: Insights, zoneName: (zone: string) => string): string[] => {
  const round = record.rounds.find(({ thing }) => thing === need?.score.round);
  if (!need || !round) return [];
  const { score, classes } = need;
  const told: string[] = [];
  if (score.value !== null && score.low !== null && score.high !== null) {
    const { value, range } = figure({ value: score.value, low: score.low, high: score.high });
    told.push(words.index(value, range));
  }
  for (const what of ['green', 'bare'] as const) {
    const { value, low, high } = score.active[what];
    if (value > 0)
      told.push(words[what](area(value), words.seen(fromTo(area(low), area(high)), share(score.seenShare))));
  }
  for (const zone of classes.zones)
    for (const kind of zone.stopWords) told.push(words.stop(kindOf(kind)?.name ?? kind, zoneName(zone.about)));
  return told.map((what) => words.join(words.round(date(round.body.date)), what));
};

const ofHolds = ({ holds, advice }: Insights, zoneName: (zone: string) => string): string[] => [
  ...holds
    .filter(
      ({ shortening }) => shortening.word === 'getting shorter' || shortening.word === 'looks shorter, not proven',
    )
    .map(({ zone, shortening }) => `${words.shorter(zoneName(zone), shortening.word)}.`),
  ...advice.filter(({ asksConservator }) => asksConservator).map(({ zone }) => `${words.ask(zoneName(zone))}.`),
];

/** What the record says today that a decision may rest on: sentences to pick from, none of them weighed. */
export const evidenceOf = (
  insights: Insights,
  thoughts: readonly Thing<'interpretation'>[],
  zoneName: (zone: string) => string,
): readonly string[] => {
  const said = ({ by, date: day, statement }: BodyOf<'interpretation'>) => words.said(by, date(day), statement);
  const sentences = [
    ...ofRound(insights, zoneName),
    ...ofHolds(insights, zoneName),
    ...thoughts.map(({ body }) => said(body)),
  ];
  return [...new Set(sentences.map((sentence) => sentence.slice(0, 500)))];
};
