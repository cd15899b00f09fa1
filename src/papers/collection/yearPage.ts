import type { PaperSource } from '../../engine/reckoning';
import { yearVerdicts } from '../../engine/trade';
import { list as inWords, w, figure as written } from '../../words';
import { h, list, notLooked, type PaperPiece, type PaperSort, say, section, table, under } from '../layout';
import { nameOfWork, ownText, thingsIn } from '../reading';
import { gardenMap, keyOfSigns, signOf, smallSign } from './gardenMap';
import { lettersSaid } from './namesIn';
import { type WorkInYear, workInYear } from './workInYear';
import { sureChanges, unsureChanges } from './yearChanges';
import { moneyOfYear, planOf } from './yearMoney';
import { mostWanted, wantedOf } from './yearWanted';

const words = w.paperYear;
const id = 'year-page';

/** What a director has to know of a year, on one sheet. */
export const yearPage: PaperSort = {
  id,
  about: 'year',
  pages: [1, 1],
  title: words.sort,
  reader: words.reader,
  speaksOf: ['money'],
  choices: ({ works }) => {
    const years = new Set(works.flatMap(({ record }) => record.rounds.map(({ body }) => body.date.slice(0, 4))));
    return [...years]
      .sort()
      .reverse()
      .map((year) => ({ about: year, label: year }));
  },
  make: (source, about) => {
    const year = Number(about);
    if (!yearPage.choices(source).some((one) => one.about === about)) return undefined;
    const works = source.works.map((work) => workInYear(work, year));
    const head = ownText(source, id, about, 'head');
    const wanted = ownText(source, id, about, 'wanted');
    const drafted = wantedOf(source, works, year);
    const lines = wanted.trim() ? wanted.split('\n').filter((line) => line.trim()) : drafted;
    return {
      title: words.title(about),
      over: source.name,
      number: source.name,
      state: source.state,
      own: [
        { part: 'head', label: words.own.head, hint: words.own.headHint, text: head, longest: 300 },
        {
          ...{ part: 'wanted', label: words.own.wanted, hint: words.own.wantedHint, text: wanted, longest: 600 },
          drafted: drafted.join('\n'),
        },
      ],
      lacks: lacksOf(source, works, year),
      body: [
        h(
          'div',
          { class: 'one-page' },
          head !== '' && say(head, 'lead'),
          notLookedIn(works),
          section(words.state, stateOf(source, works)),
          h(
            'div',
            { class: 'side-by-side' },
            under(words.sure, sureChanges(works)),
            under(words.unsure, unsureChanges(works)),
          ),
          say(words.changesHow, 'small'),
          h(
            'div',
            { class: 'side-by-side' },
            under(words.wanted, lines.length > 0 ? list(lines.slice(0, mostWanted), 'ol') : say(words.wantedNone)),
            under(words.cost, moneyOfYear(source, year)),
          ),
        ),
      ],
    };
  },
};

const notLookedIn = (works: readonly WorkInYear[]): PaperPiece => {
  const without = works.filter(({ round }) => !round).map(({ work }) => nameOfWork(work));
  const zones = works.flatMap(({ work, score }) => {
    const left = (score?.unscored ?? []).map(({ zone }) => zone);
    return left.length > 0 ? [words.notLooked.zones(nameOfWork(work), lettersSaid(work, left))] : [];
  });
  const lines = [...(without.length > 0 ? [words.notLooked.works(inWords(without))] : []), ...zones];
  return notLooked(say(lines.length > 0 ? lines.join(' ') : words.notLooked.all));
};

const stateOf = (source: PaperSource, works: readonly WorkInYear[]): PaperPiece => {
  const { work: of, due, index, before, verdict } = words.columns;
  const indexText = (score: WorkInYear['score']): string => {
    if (!score || score.value === null || score.low === null || score.high === null) return '–';
    const { value, range } = written({ value: score.value, low: score.low, high: score.high });
    return `${value} (${range})`;
  };
  const map = gardenMap(source, works);
  return [
    h(
      'div',
      map ? { class: 'map-and-table' } : {},
      map,
      table(
        '',
        [
          { head: of },
          { head: due },
          { head: index, kind: 'number' },
          { head: before, kind: 'number' },
          { head: verdict },
        ],
        works.map((one) => [
          nameOfWork(one.work),
          h('span', { class: 'sign-cell' }, smallSign(signOf(one)), words.short[signOf(one)]),
          indexText(one.score),
          indexText(one.before),
          one.verdict
            ? (yearVerdicts.find(({ id: which }) => which === one.verdict?.verdict)?.name ?? one.verdict.verdict)
            : words.notSaid,
        ]),
      ),
    ),
    keyOfSigns(works),
    say(words.how, 'small'),
  ];
};

const lacksOf = (source: PaperSource, works: readonly WorkInYear[], year: number): string[] => {
  const open = works.filter(({ verdict }) => !verdict).map(({ work }) => nameOfWork(work));
  return [
    ...(thingsIn(source.around, 'sitePlan').length > 0 ? [] : [words.lacks.map]),
    ...(open.length > 0 ? [words.lacks.verdicts(inWords(open))] : []),
    ...(planOf(source, year + 1) ? [] : [words.lacks.next(String(year + 1))]),
  ];
};
