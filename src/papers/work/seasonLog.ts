import { isInYear, type Season, seasonOf, seasonsOf } from '../../engine/care';
import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import { endOf, type Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { gateOf } from '../../engine/weather';
import {
  airText,
  date,
  list as joined,
  measure,
  money,
  number,
  w,
  whenDone,
  whereDone,
  whoDid,
  whole,
  withWhat,
} from '../../words';
import { close, leftFirst, list, type PaperPiece, type PaperSort, say, section, signatures, table } from '../layout';
import { nameOfWork, thingsIn, thingsOfAll, workOf } from '../reading';

const words = w.paperSeason;

/** A work and a year in one address: "sculpture/… 2026". */
const aboutOf = (sculpture: string, year: number): string => `${sculpture} ${year}`;
const readAbout = (about: string): { readonly sculpture: string; readonly year: number } => {
  const at = about.lastIndexOf(' ');
  return { sculpture: about.slice(0, at), year: Number(about.slice(at + 1)) };
};

const isEmpty = ({ record }: WorkOnPaper, year: number): boolean =>
  ![...record.treatments, ...record.looks, ...record.rounds].some(({ body }) => isInYear(body.date, year));

/** What was done to one work in one year: who, how long, with what, in what air, and what was left. */
export const seasonLog: PaperSort = {
  id: 'season-log',
  about: 'work',
  pages: [1, 1],
  title: words.title,
  reader: words.reader,
  speaksOf: ['money'],
  choices: ({ works, today }) =>
    works.flatMap((work) =>
      seasonsOf(work.record, Number(today.slice(0, 4)))
        .filter((year) => !isEmpty(work, year))
        .map((year) => ({
          about: aboutOf(work.record.sculpture.thing, year),
          label: words.choice(nameOfWork(work), String(year)),
        })),
    ),
  make: (source, about) => {
    const { sculpture, year } = readAbout(about);
    const work = workOf(source, sculpture);
    if (!work || !Number.isInteger(year)) return undefined;
    const { record, within } = work;
    const season = seasonOf(record, year);
    const readings = thingsIn(within, 'weather').filter(({ body }) => isInYear(body.date, year));
    const body: PaperPiece[] = isEmpty(work, year)
      ? [leftFirst(words.left, say(words.nothing(String(year))))]
      : [
          notDone(work, season, year),
          season.treatments.length > 0 && doneTable(work, season, readings),
          section(words.sums, list([...sums(source, season), ...lookedAt(work, year)])),
          airReadings(readings, season),
          notes(season),
          signatures([{ role: words.signs.did }, { role: words.signs.checked }]),
        ];
    return {
      title: words.titleOf(String(year)),
      over: nameOfWork(work),
      number: record.sculpture.body.number,
      state: work.state,
      body: [close(...body)],
      own: [],
      lacks: lacksOf(season),
    };
  },
};

const zonesIn = ({ record }: WorkOnPaper, year: number): readonly Thing<'zone'>[] =>
  record.zones.filter((zone) => (endOf(zone) ?? '9999') > `${year}-12-31`);

/** First what was left: zones nobody washed or coated, and what those who worked say they did not reach. */
const notDone = (work: WorkOnPaper, { treatments, notReached }: Season, year: number): PaperPiece => {
  const zones = zonesIn(work, year);
  const without = (is: (type: string) => boolean) => {
    const done = treatments.filter(({ body }) => is(body.type)).map(({ body }) => body.zones);
    return zones.filter(({ thing }) => !done.some((on) => on.length === 0 || on.includes(thing)));
  };
  const name = (of: readonly Thing<'zone'>[]): string =>
    of.length === zones.length ? w.logbook.whole : of.map(({ body }) => `${body.letter} ${body.name}`).join('; ');
  const washed = without((type) => type === 'wash');
  const coated = without((type) => treatmentOf(type)?.coats === true);
  const lines = [
    washed.length > 0 && words.notWashed(name(washed)),
    coated.length > 0 && words.notCoated(name(coated)),
    ...notReached.map(({ date: day, text }) => words.notReached(date(day), text)),
  ].filter((line) => typeof line === 'string');
  return leftFirst(words.left, lines.length > 0 ? list(lines) : say(words.allDone));
};

const doneTable = (
  { record }: WorkOnPaper,
  { treatments }: Season,
  readings: readonly Thing<'weather'>[],
): PaperPiece => {
  const { date: day, method, product, people, gate, zones } = words.columns;
  return [
    table(
      words.done,
      [{ head: day }, { head: method }, { head: product }, { head: people }, { head: gate }, { head: zones }],
      treatments.map(({ body }) => [
        whenDone(body),
        [treatmentOf(body.type)?.name ?? body.type, body.coats !== undefined && w.logbook.coatsOf(String(body.coats))]
          .filter(Boolean)
          .join(', '),
        withWhat(body) || words.dash,
        whoDid(body) || words.dash,
        airText(readings.find(({ thing }) => thing === body.weather)) || gateMissing(body.type),
        whereDone(record, body.zones),
      ]),
    ),
    say(words.gateHow, 'small'),
  ];
};

/** A coat asks for a reading; what asks for none says so. */
const gateMissing = (type: string): string => (treatmentOf(type)?.coats ? words.gateNone : words.gateNotAsked);

const sums = (source: PaperSource, { hours, products, costs }: Season): readonly string[] => {
  const unitOf = (stock: string | undefined) =>
    thingsOfAll(source, 'product').find(({ thing }) => thing === stock)?.body.unit;
  return [
    ...hours.map(({ role, hours: all, unknown }) => words.hours(role, number(all, 2), unknown)),
    ...products.map(({ product, batch, stock, uses, used }) => {
      const unit = unitOf(stock);
      const amount = used > 0 && unit ? `${number(used, 2)} ${w.products.units[unit]}` : '';
      return words.product(withWhat({ product, batch }), words.times(uses, whole(uses)), amount);
    }),
    ...costs.map((cost) => words.cost(money(cost))),
  ];
};

const lookedAt = ({ record }: WorkOnPaper, year: number): readonly string[] => {
  const rounds = record.rounds.filter(({ body }) => isInYear(body.date, year));
  const looks = record.looks.filter(({ body }) => isInYear(body.date, year));
  const many = (result: 'clear' | 'green' | 'unsure') =>
    whole(looks.filter(({ body }) => body.result === result).length);
  return [
    rounds.length > 0 && words.rounds(joined(rounds.map(({ body }) => date(body.date)))),
    looks.length > 0 && words.looks(looks.length, whole(looks.length), many('clear'), many('green'), many('unsure')),
  ].filter((line) => typeof line === 'string');
};

/** Readings no entry of the table rests on, and those gone on against. */
const airReadings = (readings: readonly Thing<'weather'>[], { treatments }: Season): PaperPiece => {
  const told = new Set(treatments.map(({ body }) => body.weather));
  const left = readings.filter(({ thing, body }) => !told.has(thing) || body.overridden);
  if (left.length === 0) return undefined;
  return section(
    words.readings,
    list(
      left.map(({ body }) => {
        const margin = body.humidity > 0 ? measure('difference', gateOf(body).margin.value, 1) : '?';
        const said = words.reading(
          date(body.date),
          body.time,
          words.before[body.before],
          w.careDay.says[body.said],
          margin,
        );
        const { overridden } = body;
        return overridden ? `${said}. ${words.overridden(overridden.by, overridden.why)}` : `${said}.`;
      }),
    ),
  );
};

const notes = ({ treatments }: Season): PaperPiece => {
  const told = treatments.flatMap(({ body }) => (body.note?.trim() ? [words.note(date(body.date), body.note)] : []));
  return told.length > 0 && section(words.notes, list(told.map((line) => say(line))));
};

const lacksOf = ({ treatments }: Season): readonly string[] => {
  const coats = treatments.filter(({ body }) => treatmentOf(body.type)?.coats);
  const many = (n: number, said: (n: number) => string) => (n > 0 ? [said(n)] : []);
  if (treatments.length === 0) return [words.lacks.nothing];
  return [
    ...many(treatments.filter(({ body }) => whoDid(body) === '').length, words.lacks.people),
    ...many(coats.filter(({ body }) => !body.batch).length, words.lacks.batch),
    ...many(coats.filter(({ body }) => !body.weather).length, words.lacks.reading),
  ];
};
