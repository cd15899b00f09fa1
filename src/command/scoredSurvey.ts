import { dangersWithoutRound, type NeedOf, orderOfNeed, type Rank } from '../engine/condition';
import { format, type Survey } from '../engine/exchange';
import type { SculptureRecord } from '../engine/record';
import { scaleOf } from '../engine/trade';
import { trendsOf } from '../engine/trend';
import { type ReckonedWork, reckoned } from './reckoned';
import { type Say, saidWith } from './said';
import { shownAgreement } from './shownAgreement';
import { shownChanges } from './shownChanges';
import { shownFirmness } from './shownFirmness';
import { shownHolds, shownLives } from './shownHolds';
import { shownPhotos } from './shownPhotos';
import { shownPlace } from './shownPlace';
import { shownSculpture } from './shownSculpture';
import { shownTrends } from './shownTrends';

/**
 * What a survey comes to: every work by its latest round (index, classes, zones, findings with what they take off), what changed, how
 * long coatings hold, all zones in order of need and how firm it is. `today` is a calendar day, YYYY-MM-DD; without one it is the last
 * the survey tells of. Field names are in the README.
 */
export const scoredSurvey = (survey: Survey, todayGiven?: string) => {
  const { own, climate, within, today, works, lives, needs, firmness, seed } = reckoned(survey, todayGiven);
  const said = saidWith(namesIn(works.map(({ record }) => record)));
  const withChanges = works.map((work) => ({ work, changes: shownChanges(work.record, work.first.round, said) }));
  return {
    format,
    collection: survey.collection,
    scale: scaleOf(own.scale).id,
    today,
    seed,
    notes: said(survey.notes),
    sculptures: withChanges.map(({ work, changes }) => shownSculpture(work, changes, said)),
    needs: shownNeeds(works, needs, said),
    holds: works.flatMap(({ record, first, second }) =>
      shownHolds(first.holds, second.advice, said).map((zone) => ({ sculpture: record.sculpture.thing, ...zone })),
    ),
    lives: shownLives(lives, said),
    trends: works.map(({ record }) => ({
      sculpture: record.sculpture.thing,
      ...shownTrends(trendsOf(record), said),
    })),
    changes: withChanges.map(({ changes }) => changes),
    firmness: shownFirmness(firmness, said),
    place: shownPlace(climate, said),
    photos: works.map(({ record }) => ({
      sculpture: record.sculpture.thing,
      ...shownPhotos(record, within.get(record.sculpture.thing) ?? [], said),
    })),
    agreement: works.flatMap(({ record }) => shownAgreement(record, said)),
  };
};

const shownNeeds = (works: readonly ReckonedWork[], needs: readonly NeedOf[], said: Say) => {
  const order = orderOfNeed(needs);
  // A danger is one whether a round was made or not.
  const without = works
    .filter(({ second }) => second.need === null)
    .flatMap(({ record }) =>
      dangersWithoutRound(record).map((danger) => ({ ...danger, sculpture: record.sculpture.thing })),
    );
  const ranked = ({ reasons, burden, ...rank }: Rank) => ({
    ...rank,
    burden: { ...burden, reasons: said(burden.reasons) },
    reasons: said(reasons),
  });
  return {
    people: [...order.people, ...without].map(({ reason, ...danger }) => ({ ...danger, reasons: said([reason]) })),
    zones: order.zones.map(ranked),
    sculptures: order.sculptures.map(ranked),
    notRanked: order.notRanked.map(({ reasons, ...row }) => ({ ...row, reasons: said(reasons) })),
  };
};

/** Zones, rounds and works by the names a person gave them. */
const namesIn = (records: readonly SculptureRecord[]): ((thing: string) => string | undefined) => {
  const names = new Map<string, string>();
  for (const { sculpture, zones, rounds } of records) {
    names.set(sculpture.thing, sculpture.body.title);
    for (const { thing, body } of zones) names.set(thing, `zone ${body.letter}, ${body.name}`);
    for (const { thing, body } of rounds) names.set(thing, `the round of ${body.date}`);
  }
  return (thing) => names.get(thing);
};
