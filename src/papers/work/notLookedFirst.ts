import { areaOn, type Reason } from '../../engine/record';
import { reasonsNotLooked } from '../../engine/trade';
import { area, date, share, w, whole } from '../../words';
import { list, notLooked, type PaperNode, say } from '../layout';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** What a round did not look at: the first thing a paper tells of it. `short`: what holds of every survey is left out. */
export const notLookedFirst = (latest: LatestOnPaper | undefined, short = false): PaperNode => {
  if (!latest) return notLooked(say(words.noRound));
  const { round, score, zones } = latest;
  const day = date(round.body.date);
  const left = score.unscored.map(({ zone, standing, m2, reasons }) => {
    const thing = zones.find((each) => each.thing === zone);
    return words.leftZone(zoneLabel(thing), area(m2), why(latest, standing, reasons));
  });
  return notLooked(
    say(sentence(score.zones.length, zones.length, share(score.seenShare), day)),
    list(left),
    round.body.ended === undefined && say(words.open),
    !short && say(words.surfaceOnly, 'small'),
  );
};

const sentence = (seen: number, all: number, ofArea: string, day: string): string => {
  if (seen === 0) return words.noneLooked(day);
  if (seen === all) return all === 1 ? words.oneLooked(day) : words.allLooked(whole(all), day);
  return words.someLooked(whole(seen), whole(all), ofArea, day);
};

const why = (
  { record }: LatestOnPaper,
  standing: LatestOnPaper['score']['unscored'][number]['standing'],
  reasons: readonly Reason[],
): string => {
  const said = (key: string): string =>
    String(reasons.find(({ params }) => params[key] !== undefined)?.params[key] ?? '');
  switch (standing) {
    case 'carried': {
      const from = record.rounds.find(({ thing }) => thing === said('from'));
      return from ? words.leftWhy.carried(date(from.body.date)) : words.leftWhy.carriedPlain;
    }
    case 'partly carried':
      return words.leftWhy.partly;
    case 'not visited':
      return words.leftWhy.notVisited;
    case 'not looked': {
      const code = said('why');
      return reasonsNotLooked.find(({ id }) => id === code)?.name ?? (code || words.notRecorded);
    }
  }
};

/** Square metres of all zones on the day of the round. */
export const areaOfAll = ({ zones, round }: LatestOnPaper): number =>
  zones.reduce((m2, zone) => m2 + areaOn(zone, round.body.date).m2, 0);
