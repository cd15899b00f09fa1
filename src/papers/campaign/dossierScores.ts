import {
  type BidScoring,
  compareBids,
  criteriaOf,
  ofCampaign,
  type Points,
  scoreBids,
  sheetsOf,
} from '../../engine/campaign';
import { fewestScorers, priceFormula } from '../../engine/trade';
import { currency as currencyWord, date, list, namesOfCampaign, number, sayReason, sourceSaid, w } from '../../words';
import { list as listOf, type PaperPiece, say, table } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';

const words = w.bidScores;

const person = ({ role, name }: { readonly role: string; readonly name?: string | undefined }): string =>
  name ? `${name} (${role})` : role;

/** How the bids were marked once the sheets were open, with what the weights were before a change; nothing where nobody marked. */
export const bidsScored = (file: CampaignOnPaper): PaperPiece => {
  const body = ofCampaign(file, 'bidCriteria')[0]?.body;
  const bids = ofCampaign(file, 'bid');
  const criteria = criteriaOf(body);
  const sheets = sheetsOf(body, criteria, ofCampaign(file, 'bidScore'), bids);
  if (!body || !sheets.open || !sheets.standings.some(({ whole }) => whole)) return undefined;
  const lines = ofCampaign(file, 'quantities')[0]?.body.items ?? [];
  return [
    compareBids(lines, bids, file.today).map((comparison) => {
      const scoring = scoreBids(comparison, criteria, sheets.standings);
      return [
        scoresTable(scoring, currencyWord(comparison.currency)),
        scoring.reasons.map((reason) => say(sayReason(reason), 'small')),
        listOf(
          scoring.bids.flatMap(({ bid, reasons }) =>
            reasons.map((reason) => words.alikeOf(bid.body.who, sayReason(reason, namesOfCampaign(file)))),
          ),
        ),
        say(words.how(number(scoring.apart, 1), number(fewestScorers.value)), 'small'),
      ];
    }),
    say(words.howPrice(sourceSaid(priceFormula.source)), 'small'),
    (body.changed ?? []).map((change) => [
      say(words.changedAfter(date(change.on), change.bids, change.sheets)),
      say(
        words.before(
          list(
            criteriaOf({ ...body, criteria: change.before }).map(({ name, weight }) =>
              words.weighed(name, number(weight, 1)),
            ),
          ),
          change.why,
        ),
      ),
    ]),
    body.opened && !sheets.allIn && say(words.openedBy(body.opened.by, date(body.opened.on), body.opened.why ?? '')),
  ];
};

/** The person who decided, never the sum. */
export const whoDecided = ({ campaign: { body } }: CampaignOnPaper): PaperPiece =>
  body.takenBid && [
    say(
      body.takenBy ? words.decided(person(body.takenBy), body.takenOn ? date(body.takenOn) : '') : words.nobodyDecided,
    ),
    body.takenWhy && say(body.takenWhy),
  ];

const scoresTable = ({ criteria, bids, scorers }: BidScoring, currency: string): PaperPiece =>
  table(
    words.caption(currency),
    [
      { head: words.columns.what, kind: 'wide' },
      ...bids.map(({ bid }) => ({ head: bid.body.who, kind: 'number' as const })),
    ],
    [
      ...criteria.map(({ id, name, weight }) => [
        words.weighed(name, number(weight, 1)),
        ...bids.map(({ points }) => pointsText(points.get(id))),
      ]),
      [words.columns.total, ...bids.map(({ total }) => pointsText(total))],
      ...(scorers.length > 1
        ? scorers.map(({ scorer }, i) => [
            words.totalOf(person(scorer)),
            ...bids.map(({ totals }) => (totals[i] === undefined ? words.noPoints : number(totals[i], 1))),
          ])
        : []),
    ],
    [words.place, ...bids.map(({ place }) => (place ? words.places(place.best, place.worst) : words.noPoints))],
  );

const pointsText = (points: Points | undefined): string => {
  if (!points) return words.noPoints;
  const { value, low, high } = points;
  if (low === high) return number(value, 1);
  return `${number(value, 1)} (${number(low, 1)} ${w.charts.lastTo} ${number(high, 1)})`;
};
