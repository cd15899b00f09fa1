import { addDays, type KindOfThing, type Thing } from '../record';
import type { Due, DueSort } from './due';
import { addMonths } from './months';
import type { Lists } from './planned';
import { because } from './reasonCodes';
import { watchNumbers } from './watchNumbers';

/** Kinds of planned thing that something may be due of. */
export type DueKind =
  | 'quote'
  | 'bid'
  | 'campaign'
  | 'decision'
  | 'groundsAgreement'
  | 'product'
  | 'move'
  | 'task'
  | 'incident'
  | 'hotDay'
  | 'gift'
  | 'yearPlan';

type Rest = Pick<Due, 'day' | 'reasons'> & Partial<Due>;

/** What a thing of the plan asks for, told of so many days before. */
const dueOf = <K extends KindOfThing>({ thing, body }: Thing<K>, sort: DueSort, notice: number, rest: Rest): Due => {
  const { sculpture } = body as { readonly sculpture?: unknown };
  return {
    key: `${sort}/${thing}`,
    sort,
    sculpture: typeof sculpture === 'string' && sculpture !== '' ? sculpture : null,
    zones: [],
    about: thing,
    from: addDays(rest.day, -notice),
    until: null,
    ownEnd: false,
    ...rest,
  };
};

const { noticeQuote, noticeProduct, noticeReview } = watchNumbers;

/** A price that runs out, or ran out, and that no other price took the place of. */
const quotes = ({ quote, bid, campaign }: Lists<DueKind>, today: string): Due[] => {
  const ends = (date: string) => (date < today ? ('due: quote ended' as const) : ('due: quote ends' as const));
  const open = new Set(
    campaign
      .filter(({ body }) => !body.takenBid && !body.began && !body.ended && !body.givenUp)
      .map(({ thing }) => thing),
  );
  return [
    ...quote.flatMap((one) => {
      const { validUntil: day, state, renewedBy, who, what } = one.body;
      if (!day || state === 'actual' || renewedBy) return [];
      return dueOf(one, 'quote', noticeQuote.value, { day, reasons: [because(ends(day), { who, what, date: day })] });
    }),
    ...bid.flatMap((one) => {
      const { validUntil: day, withdrawn, who } = one.body;
      if (!day || withdrawn || !open.has(one.body.campaign)) return [];
      return dueOf(one, 'quote', noticeQuote.value, {
        day,
        reasons: [because(ends(day), { who, what: '', date: day })],
      });
    }),
  ];
};

const reviews = ({ decision, groundsAgreement }: Lists<DueKind>): Due[] => [
  ...decision.flatMap((one) => {
    const { review: day, replacedBy, title } = one.body;
    if (!day || replacedBy) return [];
    return dueOf(one, 'review', noticeReview.value, {
      day,
      reasons: [because('due: review', { title, date: one.body.date })],
    });
  }),
  ...groundsAgreement.flatMap((one) => {
    const { review: day, ended, who, agreed } = one.body;
    if (!day || ended) return [];
    const reasons = [because('due: agreement', { who: who.name ?? who.role, date: agreed })];
    return dueOf(one, 'agreement', noticeReview.value, { day, reasons });
  }),
];

const stock = ({ product }: Lists<DueKind>): Due[] =>
  product.flatMap((one) => {
    const { expires: day, ended, left, name, batch } = one.body;
    if (!day || ended || left === 0) return [];
    const called = batch ? `${name}, ${batch}` : name;
    return dueOf(one, 'product', noticeProduct.value, {
      day,
      reasons: [because('due: product', { name: called, date: day })],
    });
  });

const loans = ({ move }: Lists<DueKind>): Due[] =>
  move.flatMap((one) => {
    const { backDue: day, back, sort, to, from } = one.body;
    if (!day || back || sort === 'move') return [];
    const reasons = [because('due: loan back', { to: sort === 'loan in' ? from : to, date: day })];
    return dueOf(one, 'loan', noticeReview.value, { day, reasons });
  });

/** A task that comes again stands anew so many months after it was done. */
const tasks = ({ task }: Lists<DueKind>): Due[] =>
  task.flatMap((one) => {
    const { from, until, every, done, what, zone } = one.body;
    if (done && !every) return [];
    const day = done && every ? addMonths(done.on, every) : from;
    const zones = zone ? [zone] : [];
    return dueOf(one, 'task', 0, {
      key: done ? `task/${one.thing}/${done.on}` : `task/${one.thing}`,
      day,
      until: done ? null : (until ?? null),
      zones,
      ownEnd: true,
      reasons: [because('due: task', { what })],
    });
  });

const open = ({ incident, hotDay }: Lists<DueKind>): Due[] => [
  ...incident
    .filter(({ body }) => !body.closed)
    .map((one) => {
      const { date: day, what, danger, zones = [] } = one.body;
      const code = danger === 'none' ? 'due: incident open' : 'due: incident with danger';
      const sort = danger === 'none' ? 'incident' : 'danger';
      return dueOf(one, sort, 0, { day, zones, ownEnd: true, reasons: [because(code, { what, date: day })] });
    }),
  ...hotDay
    .filter(({ body }) => !body.closed)
    .map((one) => {
      const { date: day } = one.body;
      return dueOf(one, 'hot day', 0, { day, ownEnd: true, reasons: [because('due: hot day open', { date: day })] });
    }),
];

const gifts = ({ gift }: Lists<DueKind>): Due[] =>
  gift.flatMap((one) => {
    const { expected: day, state, who } = one.body;
    if (!day || (state !== 'pledged' && state !== 'hoped')) return [];
    return dueOf(one, 'gift', noticeReview.value, { day, reasons: [because('due: gift', { who, state, date: day })] });
  });

/** Days of the lift in this year's plan and later; what lies before today is over. */
const lifts = ({ yearPlan }: Lists<DueKind>, today: string): Due[] =>
  yearPlan.flatMap((one) =>
    (one.body.liftDays ?? [])
      .filter(({ day }) => day >= today)
      .map(({ day }) =>
        dueOf(one, 'lift', noticeReview.value, {
          key: `lift/${one.thing}/${day}`,
          day,
          until: day,
          reasons: [because('due: lift', { date: day })],
        }),
      ),
  );

/** What was planned, promised or agreed, and has a day. */
export const duePlanned = (lists: Lists<DueKind>, today: string): readonly Due[] => [
  ...open(lists),
  ...quotes(lists, today),
  ...reviews(lists),
  ...stock(lists),
  ...loans(lists),
  ...tasks(lists),
  ...gifts(lists),
  ...lifts(lists, today),
];
