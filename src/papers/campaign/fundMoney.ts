import { endowmentFor, type FundFigures, targetOn } from '../../engine/fund';
import { type Money, unitsOf } from '../../engine/money';
import { quoteStanding } from '../../engine/options';
import type { PaperSource } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { amounts, date, money, number, roundMoney, w, whole } from '../../words';
import { figure, figures, type PaperPiece, say, section, table } from '../layout';
import { type CampaignOnPaper, moneyRules } from './campaignOnPaper';

const words = w.paperFund;
const steps = ['inHand', 'pledged', 'hoped'] as const;

/** Costs line by line with what pays for each, and the three sums that are never one. */
export const fundMoney = (
  source: PaperSource,
  { body: { lines, priced } }: Thing<'fund'>,
  told: FundFigures | undefined,
  file: CampaignOnPaper | undefined,
): PaperPiece => {
  if (lines.length === 0) return section(words.budget, say(words.noLines));
  if (!told) return section(words.budget, say(words.noMoney));
  const rules = moneyRules(source);
  const percent = number(rules.growth * 100, 1);
  return [
    section(
      words.budget,
      costs(told, priced),
      say(words.todayHow(percent), 'small'),
      say(
        words.later(
          roundMoney(targetOn(told.target, priced, yearsAfter(priced, 1), rules.growth)),
          roundMoney(targetOn(told.target, priced, yearsAfter(priced, 3), rules.growth)),
          percent,
        ),
      ),
      quoted(file),
    ),
    section(words.state, standing(told)),
  ];
};

const yearsAfter = (day: string, n: number): string => `${Number(day.slice(0, 4)) + n}${day.slice(4)}`;

const costs = ({ fund, target, now, cover, currency }: FundFigures, priced: string): PaperPiece => {
  const { lines } = fund.body;
  const shown = amounts([...lines.map(({ amount }) => amount), target]);
  const units = (minor: number) => (minor === 0 ? '–' : whole(unitsOf({ minor, currency })));
  const all = now.reduce((sum, { amount }) => sum + amount.minor, 0);
  return table(
    words.caption(date(priced)),
    [
      { head: words.line },
      ...([words.amount, words.today, words.inHand, words.pledged, words.hoped] as const).map((head) => ({
        head,
        kind: 'number' as const,
      })),
    ],
    lines.map(({ id, name }, i) => [
      name,
      shown[i],
      units(now[i]?.amount.minor ?? 0),
      ...steps.map((step) => units(cover.lines.get(id)?.[step] ?? 0)),
    ]),
    [words.sum, shown.at(-1), units(all), ...steps.map((step) => units(cover[step]))],
  );
};

const quoted = (file: CampaignOnPaper | undefined): PaperPiece => {
  const quote = file
    ?.things('quote')
    .filter(({ body }) => body.state === 'quote' && !body.renewedBy && body.validUntil)
    .at(-1);
  if (!file || !quote?.body.validUntil) return undefined;
  const { who, validUntil } = quote.body;
  const over = quoteStanding(quote.body, file.today).word === 'expired';
  return say(over ? words.quoteOver(who, date(validUntil)) : words.quote(who, date(validUntil)));
};

const standing = ({ pipeline, cover, gifts, now, currency }: FundFigures): PaperPiece => {
  const count = (states: readonly string[]) => gifts.filter(({ body }) => states.includes(body.state)).length;
  const here: Money = { minor: pipeline.inHand.minor + pipeline.spent.minor, currency };
  const all = now.reduce((sum, { amount }) => sum + amount.minor, 0);
  const open = all - cover.inHand - cover.pledged;
  return [
    figures(
      figure(words.states.inHand, money(here), `${words.gifts(count(['in hand', 'spent']))}. ${words.stateHow.inHand}`),
      figure(
        words.states.pledged,
        money(pipeline.pledged),
        `${words.gifts(count(['pledged']))}. ${words.stateHow.pledged}`,
      ),
      figure(words.states.hoped, money(pipeline.hoped), `${words.gifts(count(['hoped']))}. ${words.stateHow.hoped}`),
    ),
    say(
      [
        words.three,
        pipeline.inKind.minor > 0 && words.inKind(money(pipeline.inKind)),
        open > 0 ? words.open(roundMoney({ minor: open, currency })) : words.openNone,
      ]
        .filter(Boolean)
        .join(' '),
    ),
  ];
};

/** What the care afterwards costs, and what would have to be laid by for good to carry it. */
export const fundUpkeep = (source: PaperSource, { body: { upkeep } }: Thing<'fund'>): PaperPiece => {
  const { spending } = moneyRules(source);
  return section(
    words.upkeep,
    say(
      upkeep
        ? words.upkeepIs(money(upkeep), number(spending * 100, 1), money(endowmentFor(upkeep, spending)))
        : words.upkeepNone,
    ),
  );
};
