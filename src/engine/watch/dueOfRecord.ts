import type { Advice, ZoneHolds } from '../hold';
import { addDays, type Reason, type SculptureRecord, type Thing, zonesAt } from '../record';
import type { Due, DueSort } from './due';
import { addMonths } from './months';
import { because } from './reasonCodes';
import { stopWordsStanding } from './stopWordsSeen';
import { watchNumbers } from './watchNumbers';

/** What was worked out for one work, as far as due things read it. */
export interface WorkKnown {
  /** All that is not of a round, of the rounds at least their days. */
  readonly record: SculptureRecord;
  readonly holds: readonly ZoneHolds[];
  readonly advice: readonly Advice[];
}

export interface RecordDueOptions {
  readonly yearPlans: readonly Thing<'yearPlan'>[];
  /** What is away on loan is neither looked at nor waxed nor walked round here. */
  readonly moves?: readonly Thing<'move'>[];
  readonly today: string;
}

/** Last day on which anything was said of the surface: with it the keys of what holds ask for stay, and go when more is known. */
const lastSaid = ({ looks, treatments, rounds }: SculptureRecord, today: string): string =>
  [...looks, ...treatments, ...rounds]
    .map(({ body }: { readonly body: { readonly date: string } }) => body.date)
    .filter((date) => /^\d{4}-\d{2}-\d{2}$/.test(date) && date <= today)
    .sort()
    .at(-1) ?? 'never';

interface ZoneDay {
  readonly zone: string;
  readonly day: string;
  readonly reasons: readonly Reason[];
}

/** What several zones of a work ask for is one errand, on the day of the first. */
const errand = (record: SculptureRecord, sort: 'look' | 'wax', days: readonly ZoneDay[], today: string): Due[] => {
  const { thing } = record.sculpture;
  const [first] = [...days].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  if (!first) return [];
  // What falls within a month of the first is done on the same way.
  const together = days.filter(({ day }) => day <= addDays(first.day, watchNumbers.soon.value));
  return [
    {
      key: `${sort}/${thing}/${lastSaid(record, today)}`,
      sort,
      sculpture: thing,
      zones: together.map(({ zone }) => zone),
      about: thing,
      day: first.day,
      from: first.day,
      until: null,
      ownEnd: false,
      reasons: [because(`due: ${sort}`, { count: together.length, date: first.day }), ...first.reasons],
    },
  ];
};

const looks = ({ record, advice }: WorkKnown, today: string): Due[] =>
  errand(
    record,
    'look',
    advice.flatMap(({ zone, nextLook }) => (nextLook ? [{ zone, day: nextLook.day, reasons: nextLook.reasons }] : [])),
    today,
  );

/** A zone on which the last look saw something to ask the conservator about is not waxed before they have said so. */
const waxes = ({ record, advice }: WorkKnown, today: string): Due[] => {
  const stopped = new Set(stopWordsStanding(record).map(({ zone }) => zone));
  return errand(
    record,
    'wax',
    advice.flatMap(({ zone, waxAgainBy, reasons }) =>
      waxAgainBy && !stopped.has(zone) ? [{ zone, day: waxAgainBy.day, reasons }] : [],
    ),
    today,
  );
};

/** A year after the last, or as the plan of the year says; a work that was never walked round is due now. */
const rounds = ({ record }: WorkKnown, { yearPlans, today }: RecordDueOptions): Due[] => {
  const { thing } = record.sculpture;
  if (zonesAt(record, today).length === 0) return [];
  const last = record.rounds
    .filter(({ body }) => body.type === 'annual' && body.ended !== undefined && body.date <= today)
    .at(-1)?.body.date;
  const own = (day: string, reasons: readonly Reason[]): Due[] => [
    {
      key: `round/${thing}/${last ?? 'none'}`,
      sort: 'round',
      sculpture: thing,
      zones: [],
      about: thing,
      day,
      from: addDays(day, -watchNumbers.noticeReview.value),
      until: null,
      ownEnd: false,
      reasons,
    },
  ];
  if (last === undefined) return own(today, [because('due: round, none yet')]);
  const usual = addMonths(last, watchNumbers.roundEvery.value);
  const why = because('due: round', { date: last });
  const rows = yearPlans
    .filter(({ body }) => body.year === Number(usual.slice(0, 4)) || body.year === Number(today.slice(0, 4)))
    .sort((a, b) => a.body.year - b.body.year)
    .flatMap(({ body }) => body.works.filter(({ work }) => work === thing).map((row) => ({ ...row, year: body.year })));
  const planned = rows.find(({ day, survey }) => survey === 'full' && day !== undefined && day > last);
  if (planned?.day) return own(planned.day, [because('due: round, as planned', { year: planned.year }), why]);
  // Her own plan says that no round of this work is made in the year it would fall into.
  if (rows.some(({ year, survey }) => survey !== 'full' && year === Number(usual.slice(0, 4)))) return [];
  return own(usual, [why]);
};

const dangers = ({ record }: WorkKnown): Due[] =>
  record.personChecks
    .filter(({ body }) => !body.closed)
    .map(({ thing, body }) => ({
      key: thing,
      sort: 'danger' satisfies DueSort,
      sculpture: record.sculpture.thing,
      zones: body.zone ? [body.zone] : [],
      about: thing,
      day: body.opened,
      from: body.opened,
      until: null,
      ownEnd: true,
      reasons: [because('due: danger', { what: body.what, date: body.opened })],
    }));

const isAway = (work: string, moves: readonly Thing<'move'>[], today: string): boolean =>
  moves.some(
    ({ body }) =>
      body.sculpture === work && body.sort === 'loan out' && body.left <= today && (body.back ?? '9999') > today,
  );

/** What the surface itself asks for: looks, waxes, the next round, and what could hurt someone. */
export const dueOfRecord = (known: WorkKnown, options: RecordDueOptions): readonly Due[] => {
  const { moves = [], today } = options;
  const here = !isAway(known.record.sculpture.thing, moves, today);
  return [
    ...dangers(known),
    ...(here ? [...looks(known, today), ...waxes(known, today), ...rounds(known, options)] : []),
  ];
};
