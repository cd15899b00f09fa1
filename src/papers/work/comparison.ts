import {
  type FindingChange,
  previousComparable,
  type ThenAndNow,
  thenAndNow,
  type Verdict,
  type ZoneChange,
} from '../../engine/change';
import { endOf, type Figure } from '../../engine/record';
import { activities, counts, kindOf, severities, treatmentOf } from '../../engine/trade';
import { date, midSentence, type NameOfThing, number, sayReason, share, w } from '../../words';
import { list, type PaperPiece, say, section, table, under } from '../layout';
import { roundTypeOf, surfaceOf } from './conditionFacts';
import { ranged } from './conditionFigures';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** The round against the last one like it: zone by zone, what changed for sure, what perhaps, and what was done between. */
export const comparison = (latest: LatestOnPaper, nameOf: NameOfThing): PaperPiece => {
  const { record, round } = latest;
  const { round: previous, instead, reasons } = previousComparable(record, round.thing);
  if (!previous)
    return section(
      words.comparison,
      say(instead ? words.comparisonUnlike(date(instead.body.date)) : words.comparisonNone),
      instead && list(reasons.map((reason) => sayReason(reason, nameOf))),
    );
  const answer = thenAndNow(record, previous.thing, round.thing);
  return section(
    words.comparison,
    zonesThenAndNow(
      latest,
      answer,
      words.comparedWith(roundTypeOf(previous), date(previous.body.date), surfaceOf(previous)),
    ),
    say(words.comparedHow, 'small'),
    ...changes(latest, answer),
    under(words.done, ...doneBetween(answer)),
  );
};

const verdictOf = ({ verdict, clearly }: { readonly verdict: Verdict; readonly clearly: boolean }): string => {
  const said = w.thenAndNow.verdict[verdict];
  return clearly && (verdict === 'worse' || verdict === 'better') ? w.thenAndNow.clearlyVerdict(said) : said;
};

const indexOr = (figure: Figure | null): string => (figure ? ranged(figure) : words.classNone);

const zonesThenAndNow = (
  latest: LatestOnPaper,
  { zones, sculpture: { index } }: ThenAndNow,
  caption: string,
): PaperPiece => {
  const { zone, before, now, least, verdict } = words.comparedColumns;
  const row = (name: string, of: Pick<ZoneChange, 'earlier' | 'later' | 'smallest' | 'verdict' | 'clearly'>) => [
    name,
    indexOr(of.earlier),
    indexOr(of.later),
    of.smallest === null ? '–' : number(of.smallest, 1),
    verdictOf(of),
  ];
  const living = zones.filter((each) => {
    const thing = latest.record.zones.find((one) => one.thing === each.zone);
    return thing !== undefined && (endOf(thing) === undefined || each.verdict !== 'not comparable');
  });
  return table(
    caption,
    [
      { head: zone },
      { head: before, kind: 'number' },
      { head: now, kind: 'number' },
      { head: least, kind: 'number' },
      { head: verdict },
    ],
    living.map((each) => row(zoneLabel(latest.record.zones.find(({ thing }) => thing === each.zone)), each)),
    row(words.wholeWork, index),
  );
};

/** What changed for sure apart from what perhaps did; the rest is counted. */
const changes = (latest: LatestOnPaper, answer: ThenAndNow): PaperPiece[] => {
  const { findings, comparisons, expectedByChance } = answer;
  const moved = [
    ...indexChanges(latest, answer),
    ...findings.map((change) => ({ ...change, said: sentenceOf(latest, change) })),
  ].filter(({ verdict }) => verdict === 'worse' || verdict === 'better');
  const sure = moved.filter(({ aloneCouldBeChance }) => !aloneCouldBeChance);
  const perhaps = moved.filter(({ aloneCouldBeChance }) => aloneCouldBeChance);
  const count = (of: Verdict) => findings.filter(({ verdict }) => verdict === of).length;
  const same = count('no sure change');
  const others = words.carriedOrNot(count('carried'), count('not comparable'));
  return [
    under(words.changed, sure.length > 0 ? list(sure.map(({ said }) => said)) : say(words.changedNone)),
    under(
      words.unsure,
      list(perhaps.map(({ said }) => said)),
      same > 0 && say(words.noSureChange(same)),
      others !== '' && say(`${others}.`),
      comparisons > 0 && say(words.byChance(comparisons, number(expectedByChance, 1)), 'small'),
    ),
  ];
};

/** The whole work and its zones, as the table tells them. */
const indexChanges = ({ record }: LatestOnPaper, { zones, sculpture: { index } }: ThenAndNow) =>
  [
    { ...index, name: words.wholeWork },
    ...zones.map((zone) => ({ ...zone, name: zoneLabel(record.zones.find(({ thing }) => thing === zone.zone)) })),
  ].map(({ name, verdict, clearly, aloneCouldBeChance, earlier, later }) => ({
    verdict,
    aloneCouldBeChance,
    said: words.indexChange(name, verdictOf({ verdict, clearly }), indexOr(earlier), indexOr(later)),
  }));

const sentenceOf = ({ record }: LatestOnPaper, change: FindingChange): string => {
  const { kind, zone, earlier, later, named } = change;
  const told = named.map((naming) =>
    naming.what === 'new' || naming.what === 'gone'
      ? midSentence(w.thenAndNow.named[naming.what])
      : words.namedFrom(naming.what, stepNamed(naming.what, naming.from), stepNamed(naming.what, naming.to)),
  );
  const cover =
    earlier.coverage && later.coverage
      ? [words.fromTo(share(earlier.coverage.value), share(later.coverage.value))]
      : later.coverage && later.state === 'seen'
        ? [words.now(share(later.coverage.value))]
        : [];
  return words.changeOf(
    zoneLabel(record.zones.find(({ thing }) => thing === zone)),
    kindOf(kind)?.name ?? kind,
    verdictOf(change),
    [...cover, ...told].join('; '),
  );
};

const steps = { severity: severities, activity: activities, count: counts } as const;

/** "moderate", "two to five": as it is said, whatever its code. */
const stepNamed = (what: keyof typeof steps, code: string): string =>
  midSentence(steps[what].find(({ id }) => id === code)?.name ?? code);

const doneBetween = ({ between }: ThenAndNow): PaperPiece[] =>
  between.length === 0
    ? [say(words.doneNone)]
    : [
        list(
          between.map(({ type, date: day, sure, breaksSeries }) =>
            [
              w.thenAndNow.doneOn(treatmentOf(type)?.name ?? type, date(day)),
              !sure && w.thenAndNow.perhaps,
              breaksSeries && w.thenAndNow.breaks,
            ]
              .filter(Boolean)
              .join(' '),
          ),
        ),
        say(words.doneWhat, 'small'),
      ];
