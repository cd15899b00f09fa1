import { defaultMoneyRules, isCurrency, type MoneyRules } from '../../engine/money';
import { number, percentTyped, typedNumber, typedRise, w } from '../../words';

const words = w.money;

/** The rules as they are typed: shares as per cent. */
export type RulesText = Readonly<Record<'currency' | 'rate' | 'growth' | 'contingency' | 'years' | 'spending', string>>;

/** Ends of what may be set, as the schema of the record has them: per cent, and years. */
const ends = {
  rate: [0, 30],
  growth: [-10, 30],
  contingency: [0, 100],
  years: [1, 100],
  spending: [0.1, 20],
} as const;

export const rulesText = (rules: MoneyRules): RulesText => ({
  currency: rules.currency ?? '',
  rate: percentTyped(rules.rate),
  growth: percentTyped(rules.growth),
  contingency: percentTyped(rules.contingency),
  years: `${rules.years}`,
  spending: percentTyped(rules.spending),
});

export type RulesFault = Readonly<Partial<Record<keyof RulesText, string>>>;

type Numbers = Pick<MoneyRules, keyof typeof defaultMoneyRules>;

/** The rules typed, or what is wrong with each field. */
export const readRules = (
  text: RulesText,
): { readonly rules: Numbers & { readonly currency: string } } | { readonly faults: RulesFault } => {
  const faults: Record<string, string> = {};
  const read = (key: keyof typeof ends): number => {
    const value = key === 'years' ? typedNumber(text[key]) : typedRise(text[key]);
    const [low, high] = ends[key];
    if (value === undefined || (key === 'years' && !Number.isInteger(value))) faults[key] = words.notNumber(words[key]);
    else if (value < low || value > high) faults[key] = words.between(words[key], number(low), number(high));
    // Shares to a hundredth of a per cent; binary dust is not kept.
    return key === 'years' ? (value ?? 0) : Math.round((value ?? 0) * 1e4) / 1e6;
  };
  const rules = {
    currency: text.currency,
    rate: read('rate'),
    growth: read('growth'),
    contingency: read('contingency'),
    years: read('years'),
    spending: read('spending'),
  };
  if (!isCurrency(text.currency)) faults.currency = words.noCurrency;
  return Object.keys(faults).length > 0 ? { faults } : { rules };
};

export const defaultsText = (currency: string): RulesText => rulesText({ ...defaultMoneyRules, currency, set: false });
