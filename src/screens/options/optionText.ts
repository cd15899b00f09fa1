import type { GoodMonthsTold, Option, OptionCost } from '../../engine/options';
import { optionSortOf } from '../../engine/trade';
import { number, typedNumber, w } from '../../words';
import { type CostFault, type CostText, costText, readCost } from './costText';

const words = w.options.sheet;

/** A way to go on as it is typed. */
export interface OptionText {
  readonly sort: string;
  readonly title: string;
  readonly whole: boolean;
  readonly zones: readonly string[];
  readonly costs: readonly CostText[];
  readonly months: Readonly<Record<'value' | 'low' | 'high', string>>;
  readonly irreversible: string;
  readonly size: 'small' | 'large' | undefined;
  readonly does: string;
  readonly risks: string;
  readonly who: string;
  readonly note: string;
}

const plain = (value: number): string => number(value, 1);

export const optionText = (body: Option | undefined): OptionText => ({
  sort: body?.sort ?? '',
  title: body?.title ?? '',
  whole: !body?.zones?.length,
  zones: body?.zones ?? [],
  costs: body?.costs.map(costText) ?? [],
  months: {
    value: body?.goodMonths ? plain(body.goodMonths.value) : '',
    low: body?.goodMonths ? plain(body.goodMonths.low) : '',
    high: body?.goodMonths ? plain(body.goodMonths.high) : '',
  },
  irreversible: body ? `${body.irreversible}` : '',
  size: body?.irreversibleSize,
  does: body?.does ?? '',
  risks: body?.risks ?? '',
  who: body?.who ?? '',
  note: body?.note ?? '',
});

/** Another sort chosen: its name, and what the trade says of it, stand until somebody writes otherwise. */
export const withSort = (text: OptionText, sort: string): OptionText => {
  const [before, row] = [optionSortOf(text.sort), optionSortOf(sort)];
  const kept = (own: string, was: string | undefined, is: string | undefined) =>
    own === '' || own === was ? (is ?? '') : own;
  return {
    ...text,
    sort,
    title: kept(text.title, before?.name, sort === 'other' ? '' : row?.name),
    does: kept(text.does, before?.does, row?.does),
    risks: kept(text.risks, before?.risks, row?.risks),
    who: kept(text.who, before?.who, row?.who),
    size: row?.irreversibleSize,
  };
};

/** The months proposed, as they are typed. */
export const monthsTyped = (months: NonNullable<GoodMonthsTold['months']>): OptionText['months'] => ({
  value: plain(months.value),
  low: plain(months.low),
  high: plain(months.high),
});

export interface OptionFaults {
  readonly title?: string;
  readonly zones?: string;
  readonly months?: string;
  readonly irreversible?: string;
  readonly costs: Readonly<Record<number, CostFault>>;
}

const readMonths = (
  { value, low, high }: OptionText['months'],
  proposed: GoodMonthsTold['months'],
): Option['goodMonths'] | 'fault' => {
  if (value.trim() === '' && low.trim() === '' && high.trim() === '') return undefined;
  const about = typedNumber(value);
  const [least, most] = [typedNumber(low.trim() || value), typedNumber(high.trim() || value)];
  if (about === undefined || least === undefined || most === undefined || Math.max(about, least, most) > 12)
    return 'fault';
  const typed = monthsTyped({ value: about, low: least, high: most, from: 'published' });
  const same = proposed && Object.entries(monthsTyped(proposed)).every(([key, said]) => typed[key as 'value'] === said);
  return { value: about, low: least, high: most, from: same ? proposed.from : 'said' };
};

/** What will be kept, or what is wrong where. */
export const readOption = (
  text: OptionText,
  sculpture: string,
  currency: string,
  proposed: GoodMonthsTold['months'],
): { readonly body: Option } | { readonly faults: OptionFaults } => {
  const costs: OptionCost[] = [];
  const wrong: Record<number, CostFault> = {};
  for (const cost of text.costs) {
    const read = readCost(cost, currency);
    if ('line' in read) costs.push(read.line);
    else wrong[cost.key] = read.fault;
  }
  const months = readMonths(text.months, proposed);
  const steps = text.irreversible.trim() === '' ? 0 : typedNumber(text.irreversible);
  const stepsWrong = steps === undefined || !Number.isInteger(steps) || steps > 1000;
  const faults: OptionFaults = {
    ...(text.title.trim() === '' ? { title: words.missing } : {}),
    ...(!text.whole && text.zones.length === 0 ? { zones: words.zonesMissing } : {}),
    ...(months === 'fault' ? { months: words.notMonths } : {}),
    ...(stepsWrong ? { irreversible: words.notWhole } : {}),
    costs: wrong,
  };
  if (Object.keys(faults).length > 1 || Object.keys(wrong).length > 0 || months === 'fault' || stepsWrong)
    return { faults };
  const some = (said: string) => (said.trim() === '' ? undefined : said.trim());
  return {
    body: {
      sculpture,
      sort: text.sort,
      title: text.title.trim(),
      zones: text.whole ? undefined : [...text.zones],
      costs,
      goodMonths: months,
      irreversible: steps,
      irreversibleSize: steps > 0 ? text.size : undefined,
      does: some(text.does),
      risks: some(text.risks),
      who: some(text.who),
      note: some(text.note),
    },
  };
};
