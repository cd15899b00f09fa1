import { levelOf } from '../condition';
import { holdNumbers } from '../hold';
import type { BodyOf, Reason } from '../record';
import { reaches } from '../trade';
import type { WorkFacts } from './facts';
import { yearNumbers } from './numbers';
import { because } from './reasonCodes';

export type Row = BodyOf<'yearPlan'>['works'][number];

/** What a year might hold for a work, and why. Hers stands in its place. */
export interface Proposal extends Pick<Row, 'work' | 'survey' | 'lift'> {
  readonly waxes: 0 | 1 | 2;
  readonly reasons: {
    readonly survey: readonly Reason[];
    readonly waxes: readonly Reason[];
    readonly lift: readonly Reason[];
  };
}

const lettersOf = (facts: WorkFacts, zones: readonly string[]): string =>
  facts.zones
    .filter(({ zone }) => zones.includes(zone.thing))
    .map(({ zone }) => zone.body.letter)
    .join(', ');

const areaIn = (facts: WorkFacts, zones: readonly string[]): number =>
  facts.zones.filter(({ zone }) => zones.includes(zone.thing)).reduce((sum, { m2 }) => sum + m2, 0);

/** What asks for a full round. */
const forFull = (facts: WorkFacts, year: number): Reason[] => {
  const { need, rounds } = facts;
  const before = rounds.filter((day) => day < `${year}-01-01`);
  const last = before.at(-1);
  if (!need || rounds.length === 0) return [because('year: no round yet')];
  const { sculpture, dangers } = need.classes;
  const urgency = levelOf(sculpture, 'urgency') ?? 0;
  const condition = levelOf(sculpture, 'condition') ?? 0;
  const unseen = need.score.unscored.map(({ zone }) => zone);
  const { stopWords } = sculpture;
  return [
    ...(dangers.length > 0 ? [because('year: danger', { count: dangers.length })] : []),
    ...(stopWords.length > 0 ? [because('year: stop word', { kinds: stopWords.join(', ') })] : []),
    ...(urgency > 0 ? [because('year: urgency', { urgency })] : []),
    ...(condition > 1 ? [because('year: condition', { condition })] : []),
    ...(unseen.length > 0 ? [because('year: zones not seen', { letters: lettersOf(facts, unseen) })] : []),
    ...(last !== undefined && last < `${year - 1}-01-01`
      ? [because('year: no round the year before', { day: last })]
      : []),
    ...(rounds.length < yearNumbers.roundsForQuiet.value
      ? [because('year: too few rounds', { rounds: rounds.length, least: yearNumbers.roundsForQuiet.value })]
      : []),
  ];
};

const surveyOf = (facts: WorkFacts, year: number): Pick<Proposal, 'survey'> & { readonly why: Reason[] } => {
  const { away } = facts;
  // Back before the year's end at the latest: it can still be looked at then.
  if (away && (away.body.backDue ?? '9999') > `${year}-12-31`)
    return { survey: 'none', why: [because('year: away', { to: away.body.to, due: away.body.backDue ?? '' })] };
  const full = forFull(facts, year);
  return full.length > 0
    ? { survey: 'full', why: full }
    : { survey: 'look', why: [because('year: a look will do'), because('year: usual least')] };
};

/** Years between the coatings of the work, as they mostly were; null with fewer than two. */
const rhythmOf = (coatings: readonly string[]): number | null => {
  const years = [...new Set(coatings.map((day) => Number(day.slice(0, 4))))];
  const gaps = years
    .slice(1)
    .map((year, i) => year - (years[i] as number))
    .sort((a, b) => a - b);
  return gaps[Math.floor((gaps.length - 1) / 2)] ?? null;
};

const waxesOf = (facts: WorkFacts, year: number): { readonly waxes: 0 | 1 | 2; readonly why: Reason[] } => {
  const { coatings, advice, holds } = facts;
  const last = coatings.filter((day) => day < `${year}-01-01`).at(-1);
  if (last === undefined) return { waxes: 0, why: [because('year: never waxed')] };
  const named = (pick: (zone: string) => boolean): string[] =>
    facts.zones.map(({ zone }) => zone.thing).filter((zone) => pick(zone));
  const adviceFor = (zone: string) => advice.find((one) => one.zone === zone);
  const fails = named((zone) => adviceFor(zone)?.asksConservator === true);
  const failing = fails.length > 0 ? [because('year: wax does not hold', { letters: lettersOf(facts, fails) })] : [];
  const stops = facts.need?.classes.sculpture.stopWords.length ?? 0;
  const stopping = stops > 0 ? [because('year: no wax before the stop word')] : [];
  const back = named(
    (zone) => holds.find((one) => one.zone === zone)?.onNow?.state === 'back' && !fails.includes(zone),
  );
  const rhythm = rhythmOf(coatings) ?? 1;
  if (back.length === 0 && fails.length === 0 && Number(last.slice(0, 4)) + rhythm > year)
    return { waxes: 0, why: [because('year: waxed every so many years', { years: rhythm, last })] };
  const isShort = (zone: string): boolean => {
    const months = adviceFor(zone)?.expected?.value;
    return (
      months !== undefined &&
      !fails.includes(zone) &&
      months >= holdNumbers.leastHold.value &&
      months <= yearNumbers.secondWaxUnder.value
    );
  };
  const short = named(isShort);
  const unknown = named((zone) => adviceFor(zone)?.expected === null && !fails.includes(zone));
  const spray = facts.zones
    .filter(({ zone }) => unknown.includes(zone.thing) && zone.body.exposure.includes('spray'))
    .map(({ zone }) => zone.thing);
  const whole = facts.zones.reduce((sum, { m2 }) => sum + m2, 0);
  const share = whole > 0 ? areaIn(facts, [...short, ...spray]) / whole : 0;
  const twice = share >= yearNumbers.secondWaxShare.value;
  const why = [
    rhythm > 1
      ? because('year: waxed every so many years', { years: rhythm, last })
      : because('year: waxed every year', { last }),
    ...(back.length > 0 ? [because('year: green is back', { letters: lettersOf(facts, back) })] : []),
    ...(twice && short.length > 0
      ? [
          because('year: holds short', {
            letters: lettersOf(facts, short),
            months: yearNumbers.secondWaxUnder.value,
            percent: Math.round((100 * areaIn(facts, short)) / whole),
          }),
        ]
      : []),
    ...(twice && spray.length > 0 ? [because('year: spray', { letters: lettersOf(facts, spray) })] : []),
  ];
  return { waxes: twice ? 2 : 1, why: [...stopping, ...failing, ...why] };
};

const upHigh = new Set(reaches.filter(({ from }) => from === 'lift' || from === 'scaffold').map(({ id }) => id));

/** What a year might hold for a work: a full round, a look or none, waxes, a lift. A beginning of hers, no order. */
export const proposalOf = (facts: WorkFacts, year: number): Proposal => {
  const { survey, why } = surveyOf(facts, year);
  const wax = survey === 'none' ? { waxes: 0 as const, why: [] } : waxesOf(facts, year);
  const high = facts.zones.filter(({ zone }) => upHigh.has(zone.body.reach)).map(({ zone }) => zone.thing);
  const lift = high.length > 0 && (survey === 'full' || wax.waxes > 0);
  return {
    work: facts.work,
    survey,
    waxes: wax.waxes,
    ...(lift ? { lift: true as const } : {}),
    reasons: {
      survey: why,
      waxes: wax.why,
      lift: lift ? [because('year: lift for zones', { letters: lettersOf(facts, high) })] : [],
    },
  };
};
