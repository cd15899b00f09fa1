import { rulesOf } from '../../engine/hold';
import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { optionSortOf } from '../../engine/trade';
import { area, date, list, monthsText, share, w } from '../../words';
import { list as listOf, type PaperPiece, pictures, say, section } from '../layout';
import type { LatestOnPaper } from '../work/latestOnPaper';
import { areaOfAll } from '../work/notLookedFirst';
import type { CampaignOnPaper } from './campaignOnPaper';
import { sameSpotPair } from './sameSpot';
import type { Ways } from './waysSideBySide';

const words = w.paperFund;

/** What is so now, seen from one spot and in square metres, and the way that was chosen out of it. */
export const opportunity = (
  work: WorkOnPaper | undefined,
  latest: LatestOnPaper | undefined,
  file: CampaignOnPaper | undefined,
  ways: Ways | undefined,
): PaperPiece => {
  if (!work) return undefined;
  const { title, maker = '', date: made, materials = '' } = work.record.sculpture.body;
  const pair = sameSpotPair(work);
  const option = ways?.chosen;
  const sort = option && optionSortOf(option.body.sort);
  const decision = file?.planned.decision.find(({ thing }) => thing === file.campaign.body.decision)?.body;
  return section(
    words.opportunity,
    say(words.identity(title, maker, made ? date(made) : '', materials)),
    pair && pictures(pair),
    latest && green(title, latest),
    say(
      [
        option ? words.path(option.body.title, option.body.does ?? sort?.does ?? '') : words.noPath,
        decision && words.chosenBy(date(decision.date), list(decision.signed.map(({ role }) => role))),
        option && option.body.irreversible > 0 && sort?.irreversible && words.cannot(sort.irreversible),
      ]
        .filter(Boolean)
        .join(' '),
    ),
  );
};

const green = (title: string, latest: LatestOnPaper): PaperPiece => {
  const { value, low, high } = latest.score.active.green;
  return [
    say(words.surface(title, area(value), area(areaOfAll(latest)), date(latest.round.body.date))),
    say(words.surfaceHow(area(low), area(high)), 'small'),
  ];
};

/** One number and one day, from the way that was chosen and from going on as now. */
export const draftedOutcome = (
  { body: { wanted } }: Thing<'fund'>,
  work: WorkOnPaper | undefined,
  ways: Ways | undefined,
): string => {
  const option = ways?.chosen ?? ways?.leaning?.option;
  const then = option?.body.goodMonths;
  const now = ways?.options.find(({ body }) => body.sort === 'keep waxing' && body !== option?.body)?.body.goodMonths;
  const level = share(work ? rulesOf(work.record).returnLevel : 0.03);
  const measure = !then
    ? words.outcomeNone
    : now
      ? words.outcomeMonths(monthsText(now), monthsText(then), level)
      : words.outcomeMonthsOnly(monthsText(then), level);
  return `${measure} ${wanted ? words.outcomeDate(date(wanted)) : words.outcomeNoDate}`;
};

/** Who may do the work, who was chosen, and what is kept of it. */
export const whoDoesIt = (file: CampaignOnPaper | undefined, ways: Ways | undefined): PaperPiece => {
  const option = ways?.chosen;
  const taken = file?.planned.bid.find(({ thing }) => thing === file.campaign.body.takenBid)?.body;
  const who = option?.body.who;
  return section(
    words.doing,
    listOf([
      ...(taken ? [words.whoTaken(taken.who, list((taken.named ?? []).map(({ role }) => role)))] : who ? [who] : []),
      words.whoOversees,
      words.record,
    ]),
  );
};
