import { moneyOf } from '../../engine/money';
import {
  bestBuy,
  figuresOf,
  inOneCurrency,
  type NotReckoned,
  type OptionFigures,
  onceOff,
  type PriceOfWaiting,
  priceOfWaiting,
  type Situation,
  treatedArea,
} from '../../engine/options';
import type { Thing } from '../../engine/record';
import { trendsOf } from '../../engine/trend';
import { type NameOfThing, nameOfOption, namesOfOptions, roundMoney } from '../../words';
import type { CampaignOnPaper } from './campaignOnPaper';

/** The ways to go on with the work of a campaign, reckoned as on the screen of options. */
export interface Ways {
  readonly options: readonly Thing<'option'>[];
  /** Those with prices, in one currency. */
  readonly rows: readonly OptionFigures[];
  readonly apart: readonly NotReckoned[];
  /** The one the campaign follows, else the one whose good months cost least. */
  readonly leaning: OptionFigures | undefined;
  /** The one the campaign follows, with a price or without. */
  readonly chosen: Thing<'option'> | undefined;
  readonly names: NameOfThing;
  nameOf(option: string): string;
  /** "C" */
  letterOf(option: string): string;
  readonly situation: Situation;
}

export const waysOf = (file: CampaignOnPaper): Ways => {
  const { record, work, planned, rules, campaign, today } = file;
  const options = file.things('option');
  const { rows, apart } = inOneCurrency(
    options.map((option) => figuresOf(option, rules)),
    rules.currency,
  );
  const { trend } = trendsOf(record).work.green;
  const nameOf = (option: string) => nameOfOption(options, option);
  return {
    ...{ options, rows, apart, nameOf },
    leaning: rows.find(({ option }) => option.thing === campaign.body.option) ?? bestBuy(rows),
    chosen: options.find(({ thing }) => thing === campaign.body.option),
    names: namesOfOptions(options, record),
    letterOf: (option) => nameOf(option).split(' ')[0] ?? '',
    situation: {
      record,
      need: work.figures?.need ?? null,
      holds: work.figures?.holds ?? [],
      advice: work.figures?.advice ?? [],
      growth: trend.slope
        ? { perYear: trend.slope, surely: trend.word === 'trend' && trend.up, rounds: trend.n }
        : null,
      causes: planned.cause,
      today,
    },
  };
};

/** What waiting costs with a way that is paid for once; null where it is not. */
export const waitingWith = (
  { record, rules, today }: CampaignOnPaper,
  { options, situation }: Ways,
  option: Thing<'option'>,
): PriceOfWaiting | null => {
  if (onceOff(option.body, rules).length === 0) return null;
  const area = treatedArea({ record, today }, option.body.zones);
  const care = options.find(({ body }) => body.sort === 'keep waxing' && body.costs.length > 0);
  return priceOfWaiting(
    {
      option: option.body,
      care: care && care !== option ? { thing: care.thing, option: care.body } : undefined,
      growth: situation.growth?.perYear ?? null,
      area: area.m2,
      whole: area.whole,
    },
    rules,
  );
};

/** Whole units of a currency as they are written. */
export const unitsText = (units: number, currency: string): string => roundMoney(moneyOf(units, currency));
