import { causesFirst } from '../../engine/campaign';
import { endowmentFor } from '../../engine/fund';
import {
  type AtRate,
  figuresAgainst,
  priceSpread,
  signsOf,
  speaking,
  turningOf,
  type WhatIfs,
  whatIfs,
} from '../../engine/options';
import { type Thing, zonesAt } from '../../engine/record';
import { optionSortOf } from '../../engine/trade';
import {
  costText,
  currency as currencyWord,
  date,
  goodMonthsText,
  lettersOf,
  money,
  number,
  sayReason,
  share,
  tripwireText,
  w,
  whole,
} from '../../words';
import { facts, fine, h, list, type PaperPiece, say, section, signatures, table, under } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';
import { fundFigures, fundOf } from './fundOfCampaign';
import { unitsText, type Ways, waitingWith } from './waysSideBySide';

const words = w.paperBoard;

/** Two pages that say where the figures of the first come from, and what speaks against them. */
export const boardAnnex = (file: CampaignOnPaper, ways: Ways): PaperPiece =>
  fine(
    section(words.each, eachWay(file, ways)),
    ways.rows.length > 0 && section(words.rates, atThreeRates(file, ways)),
    ways.leaning && section(words.against(ways.nameOf(ways.leaning.option.thing)), againstLeaning(file, ways)),
    section(words.waiting, waiting(file, ways)),
    section(words.causes, causes(file)),
    section(words.money, moneyThere(file)),
    section(words.decided, decidedBefore(file, ways)),
    say(words.who, 'small'),
    signatures([{ role: words.proposer }, { role: words.chair }]),
  );

/** Beside each other while there is room for it on a sheet, else one after the other. */
const mostBeside = 4;

const eachWay = (file: CampaignOnPaper, ways: Ways): PaperPiece => {
  const { options, nameOf } = ways;
  const told = options.map((option) => ({ name: nameOf(option.thing), rows: wayTold(file, option) }));
  const [first] = told;
  if (!first) return say(words.noWays);
  if (told.length > mostBeside) return told.map(({ name, rows }) => under(name, facts(rows)));
  return table(
    words.eachCaption,
    [{ head: words.point }, ...told.map(({ name }) => ({ head: name }))],
    first.rows.map(([name], i) => [name, ...told.map(({ rows }) => rows[i]?.[1])]),
  );
};

const wayTold = (
  { record }: CampaignOnPaper,
  { body }: Thing<'option'>,
): readonly (readonly [string, PaperPiece])[] => {
  const sort = optionSortOf(body.sort);
  const { facts: names } = words;
  return [
    [names.does, body.does || sort?.does],
    [names.where, body.zones?.length ? words.where(lettersOf(record, body.zones)) : words.whole],
    [names.who, body.who || sort?.who],
    [names.months, goodMonthsText(body)],
    [
      names.costs,
      body.costs.length === 0
        ? words.notKnown
        : body.costs.map((line) => h('p', {}, words.cost(line.name, money(line.amount), costText(line)))),
    ],
    [names.irreversible, body.irreversible > 0 ? (sort?.irreversible ?? whole(body.irreversible)) : words.none],
    [names.risks, body.risks || sort?.risks],
  ];
};

const atThreeRates = ({ rules }: CampaignOnPaper, { rows, apart, nameOf, letterOf, names }: Ways): PaperPiece => {
  const currency = rows[0]?.currency ?? '';
  const rates = rows[0]?.atRates.map(({ rate }) => number(rate * 100, 2)) ?? [];
  const heads = [words.yearlyAt, words.monthlyAt].flatMap((head) =>
    rates.map((rate) => ({ head: head(rate), kind: 'number' as const })),
  );
  return [
    table(
      words.ratesCaption(whole(rules.years), currencyWord(currency)),
      [{ head: words.columns.way }, ...heads],
      rows.map(({ option, atRates }) => [
        letterOf(option.thing),
        ...atRates.map(({ yearly }) => spanCell(yearly)),
        ...atRates.map(({ perGoodMonth }) => (perGoodMonth ? spanCell(perGoodMonth) : words.notKnown)),
      ]),
    ),
    say(
      words.ratesHow(
        share(priceSpread.quote.value),
        share(priceSpread.estimate.value),
        share(priceSpread['made up'].value),
      ),
      'small',
    ),
    list(apart.flatMap(({ option, reasons }) => reasons.map((r) => `${nameOf(option.thing)}: ${sayReason(r, names)}`))),
  ];
};

/** A figure in whole units, with its range under it. */
const spanCell = ({ value, low, high }: AtRate['yearly'] | NonNullable<AtRate['perGoodMonth']>): PaperPiece => {
  const units = (x: number) => number(Math.round(x), 0);
  const range = high === null ? words.andMore(units(low)) : words.range(units(low), units(high));
  return [units(value), low !== high && [h('br', {}), h('span', { class: 'small' }, range)]];
};

const againstLeaning = (
  { rules }: CampaignOnPaper,
  { leaning, rows, names, nameOf, letterOf, situation }: Ways,
): PaperPiece => {
  if (!leaning) return undefined;
  const told = whatIfs(leaning, rows, rules);
  const short = (thing: string) => (letterOf(thing) === '' ? names(thing) : words.way(letterOf(thing)));
  const against = [
    ...speaking(leaning.option.body.sort, signsOf(situation)).against,
    ...figuresAgainst(leaning, rows),
    ...(told ? turningOf(leaning, told) : []),
  ];
  return [
    list(against.map((reason) => sayReason(reason, short))) ?? say(words.againstNone),
    told !== null && otherwise(told, nameOf, leaning.option.thing, leaning.currency),
  ];
};

const otherwise = (told: WhatIfs, nameOf: Ways['nameOf'], option: string, currency: string): PaperPiece => [
  table(
    words.whatIfCaption(nameOf(option), told.per, unitsText(told.cost, currency)),
    [
      { head: words.what },
      { head: words.from, kind: 'number' },
      { head: words.to, kind: 'number' },
      { head: words.turns },
    ],
    told.bars.map(({ what, low, high, answers }) => {
      const other = answers.find(({ turnsTo }) => turnsTo !== undefined)?.turnsTo;
      return [
        w.options.whatIfs[what],
        unitsText(low, currency),
        unitsText(high, currency),
        other ? nameOf(other) : words.same,
      ];
    }),
  ),
  say(words.whatIfNext(nameOf(told.next.option), unitsText(told.next.cost, currency)), 'small'),
];

const waiting = (file: CampaignOnPaper, ways: Ways): PaperPiece => {
  const priced = ways.rows.flatMap(({ option }) => {
    const told = waitingWith(file, ways, option);
    return told ? [{ option, told }] : [];
  });
  if (priced.length === 0) return say(words.waitingNone);
  const { waitColumns: heads } = words;
  const units = (value: number) => number(Math.round(value), 0);
  return priced.map(({ option, told }) => [
    table(
      words.waitingCaption(ways.nameOf(option.thing), currencyWord(told.currency)),
      [
        { head: heads.wait },
        ...([heads.price, heads.rise, heads.care, heads.growth, heads.extra] as const).map((head) => ({
          head,
          kind: 'number' as const,
        })),
      ],
      told.waits.map(({ years, price, rise, care, growth, extra }) => [
        words.waits(years),
        units(price),
        units(rise),
        units(care),
        units(growth.value),
        units(extra.value),
      ]),
    ),
    say(told.reasons.map((reason) => sayReason(reason, ways.names)).join(' '), 'small'),
  ]);
};

const causes = ({ record, planned, today }: CampaignOnPaper): PaperPiece => [
  list(causesFirst(zonesAt(record, today), planned.cause, today).reasons.map((reason) => sayReason(reason))),
];

const moneyThere = (file: CampaignOnPaper): PaperPiece => {
  const told = fundFigures(file);
  const upkeep = fundOf(file)?.body.upkeep;
  if (!told) return say(words.noFund);
  const { inHand, pledged, hoped } = told.pipeline;
  const { spending } = file.rules;
  return [
    say(words.moneyState(money(inHand), money(pledged), money(hoped))),
    upkeep && say(words.upkeep(money(upkeep), number(spending * 100, 1), money(endowmentFor(upkeep, spending)))),
  ];
};

const decidedBefore = ({ campaign, planned, today }: CampaignOnPaper, { names }: Ways): PaperPiece => {
  const decision = planned.decision.find(({ thing }) => thing === campaign.body.decision)?.body;
  if (!decision) return say(words.notDecided);
  const { date: day, title, chosen, refused, dissent, consulted, tripwires, review } = decision;
  const wires = tripwires.map((wire) => words.lowered(tripwireText(wire, names)));
  return [
    say(words.decidedOn(date(day), title)),
    list([
      words.chosen(chosen),
      ...refused.map(({ what, why }) => words.refused(what, why)),
      ...(dissent ? [words.dissent(dissent)] : []),
      ...(consulted.length > 0 ? [words.consulted(consulted.map(({ role, name }) => name ?? role))] : []),
      ...(wires.length > 0 ? [words.wires(wires)] : []),
      ...(review ? [words.review(date(review), review <= today)] : []),
    ]),
  ];
};
