import { overtaking, sideBySide } from '../../engine/options';
import { area, monthsText, number, sayReason, share, w, whole } from '../../words';
import { figure, h, type PaperPiece, say, section, table, together } from '../layout';
import type { LatestOnPaper } from '../work/latestOnPaper';
import { areaOfAll } from '../work/notLookedFirst';
import type { CampaignOnPaper } from './campaignOnPaper';
import type { Shown } from './sameSpot';
import { unitsText, type Ways, waitingWith } from './waysSideBySide';

const words = w.paperBoard;

/** Two photos from one spot, and beside them how much is green, how it grows and what the way leaned to costs once. */
export const figuresInShort = (
  file: CampaignOnPaper,
  ways: Ways,
  latest: LatestOnPaper | undefined,
  pair: readonly [Shown, Shown] | undefined,
): PaperPiece => [
  h(
    'div',
    { class: 'pictures' },
    pair?.map(({ sha256, caption }) =>
      h('figure', {}, { picture: sha256, alt: caption }, h('figcaption', {}, caption)),
    ),
    h('div', {}, greenToday(latest), greenGrows(ways), priceOnce(file, ways)),
  ),
  !pair && say(words.noPair, 'small'),
];

const greenToday = (latest: LatestOnPaper | undefined): PaperPiece => {
  if (!latest) return say(words.green.none);
  const { value, low, high } = latest.score.active.green;
  const { name, how } = words.green;
  return figure(name, area(value), how(area(low), area(high), area(areaOfAll(latest))));
};

const greenGrows = ({ situation: { growth } }: Ways): PaperPiece => {
  if (!growth) return undefined;
  const { perYear, surely, rounds } = growth;
  const how = surely ? words.change.how : words.change.unsure;
  return figure(words.change.name, area(perYear.value), how(area(perYear.low), area(perYear.high), whole(rounds)));
};

const priceOnce = (file: CampaignOnPaper, ways: Ways): PaperPiece => {
  const option = ways.chosen ?? ways.leaning?.option;
  const once = option && waitingWith(file, ways, option);
  if (!once) return undefined;
  return figure(
    words.price.name(ways.letterOf(option.thing)),
    unitsText(once.now, once.currency),
    words.price.how(share(file.rules.contingency)),
  );
};

/** All ways with what each costs and gives; never one alone without a word on that. */
export const waysTable = ({ rules }: CampaignOnPaper, ways: Ways): PaperPiece => {
  const { options, rows, nameOf } = ways;
  if (options.length === 0) return section(words.ways, say(words.noWays));
  const { columns } = words;
  const rate = number(rules.rate * 100, 2);
  return section(
    words.ways,
    table(
      words.caption(whole(rules.years), rate),
      [
        { head: columns.way },
        { head: columns.yearly, kind: 'number' },
        { head: columns.months, kind: 'number' },
        { head: columns.perMonth, kind: 'number' },
        { head: columns.steps },
      ],
      options.map((option) => {
        const row = rows.find((one) => one.option === option);
        const at = row?.atRates[1];
        const { goodMonths, irreversible, irreversibleSize } = option.body;
        return [
          nameOf(option.thing),
          row && at ? unitsText(at.yearly.value, row.currency) : words.notKnown,
          goodMonths ? monthsText(goodMonths) : words.notKnown,
          row && at?.perGoodMonth ? unitsText(at.perGoodMonth.value, row.currency) : words.notKnown,
          words.steps(whole(irreversible), irreversibleSize && words.sizes[irreversibleSize]),
        ];
      }),
    ),
    say(words.monthsHow, 'small'),
    rows.length === 0 && say(words.noMoney),
    options.length === 1 && say(words.oneWay),
    say(overlooked(ways)),
  );
};

/** What nobody may overlook, whichever way is liked: in a few lines, the ways by their letters. */
const overlooked = ({ rows, leaning, letterOf }: Ways): string => {
  const names = (thing: string) => (letterOf(thing) === '' ? undefined : words.way(letterOf(thing)));
  const caughtUp = (leaning ? overtaking(leaning, rows) : []).filter(
    ({ code }) => code === 'option: overtakes' || code === 'option: dearer throughout',
  );
  return [...sideBySide(rows), ...caughtUp].map((reason) => sayReason(reason, names)).join(' ');
};

/** What is voted on. */
export const motionBox = (motion: string): PaperPiece =>
  together(h('div', { class: 'box' }, h('p', { class: 'box-name' }, words.motion), say(motion)));
