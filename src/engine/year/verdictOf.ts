import { levelOf } from '../condition';
import type { BodyOf, Reason, Thing } from '../record';
import type { WorkFacts } from './facts';
import { because } from './reasonCodes';

export type Verdict = BodyOf<'yearVerdict'>['verdict'];

/** What might be said of a work at the end of a year, and why. Null where nobody has looked yet. A named person says it. */
export interface VerdictProposal {
  readonly verdict: Verdict | null;
  readonly reasons: readonly Reason[];
}

const lettersOf = ({ zones }: WorkFacts, names: readonly string[]): string =>
  zones
    .filter(({ zone }) => names.includes(zone.thing))
    .map(({ zone }) => zone.body.letter)
    .join(', ');

const asking = (facts: WorkFacts): Reason[] => {
  const { classes } = facts.need ?? {};
  const stopWords = classes?.sculpture.stopWords ?? [];
  const asks =
    (classes?.sculpture.recommendation.askConservator.length ?? 0) +
    (classes?.zones.filter(({ recommendation }) => recommendation.askConservator.length > 0).length ?? 0);
  const fails = facts.advice.filter(({ asksConservator }) => asksConservator).map(({ zone }) => zone);
  return [
    ...(stopWords.length > 0 ? [because('year: stop word', { kinds: stopWords.join(', ') })] : []),
    ...(asks > 0 ? [because('year: asks whether major treatment is due')] : []),
    ...(fails.length > 0 ? [because('year: wax does not hold', { letters: lettersOf(facts, fails) })] : []),
  ];
};

const watching = (facts: WorkFacts, incidents: readonly Thing<'incident'>[]): Reason[] => {
  const { need, holds } = facts;
  const urgency = need ? (levelOf(need.classes.sculpture, 'urgency') ?? 0) : 0;
  const back = holds.filter(({ onNow }) => onNow?.state === 'back').map(({ zone }) => zone);
  const unseen = need?.score.unscored.map(({ zone }) => zone) ?? [];
  const open = incidents.find(({ body }) => body.closed === undefined);
  return [
    ...(need && need.classes.dangers.length > 0
      ? [because('year: danger', { count: need.classes.dangers.length })]
      : []),
    ...(open ? [because('year: incident open', { day: open.body.date })] : []),
    ...(urgency > 0 ? [because('year: urgency', { urgency })] : []),
    ...(back.length > 0 ? [because('year: green is back', { letters: lettersOf(facts, back) })] : []),
    ...(unseen.length > 0 ? [because('year: zones not seen', { letters: lettersOf(facts, unseen) })] : []),
  ];
};

/** `campaigns` and `incidents` are those of the work. The strongest that anything speaks for; what speaks for less is told with it. */
export const verdictOf = (
  facts: WorkFacts,
  campaigns: readonly Thing<'campaign'>[],
  incidents: readonly Thing<'incident'>[],
): VerdictProposal => {
  const underWay = campaigns.find(({ body }) => body.ended === undefined && body.givenUp === undefined);
  if (underWay)
    return { verdict: 'campaign', reasons: [because('year: campaign under way', { title: underWay.body.title })] };
  const asks = asking(facts);
  const watch = watching(facts, incidents);
  if (asks.length > 0) return { verdict: 'ask a conservator', reasons: [...asks, ...watch] };
  if (!facts.need) return { verdict: null, reasons: [because('year: no round yet')] };
  const recommendation = levelOf(facts.need.classes.sculpture, 'recommendation') ?? 0;
  if (recommendation > 1)
    return { verdict: 'treat locally', reasons: [because('year: recommendation', { recommendation }), ...watch] };
  return watch.length > 0
    ? { verdict: 'watch', reasons: watch }
    : { verdict: 'hold', reasons: [because('year: nothing presses')] };
};
