import type { BodyOf } from '../../engine/record';
import { type Tripwire, tripwireSortOf } from '../../engine/watch';
import { measureTyped, numberTyped, typedMeasure, typedNumber } from '../../words';
import { type PersonSaid, peopleKept, peopleWhole, type SignedSaid } from '../parts/peopleSaid';

type Decision = BodyOf<'decision'>;

export interface RefusedText {
  readonly option: string;
  readonly what: string;
  readonly why: string;
}

/** A tripwire as it is typed. */
export interface WireText {
  readonly id: string;
  readonly sort: string;
  readonly zone: string;
  readonly level: string;
  readonly times: string;
  readonly by: string;
  readonly words: string;
}

/** A decision as it is typed. */
export interface DecisionText {
  /** '' where it is of the whole collection. */
  readonly work: string;
  readonly title: string;
  readonly day: string;
  readonly option: string;
  readonly chosen: string;
  readonly refused: readonly RefusedText[];
  /** Sentences picked from the record. */
  readonly picked: readonly string[];
  /** One thing a line. */
  readonly own: string;
  readonly consulted: readonly PersonSaid[];
  readonly dissent: string;
  readonly wires: readonly WireText[];
  readonly review: string;
  readonly signed: readonly SignedSaid[];
  readonly note: string;
}

export const newDecision = (work: string, today: string): DecisionText => ({
  ...{ work, title: '', day: today, option: '', chosen: '', refused: [], picked: [], own: '', consulted: [] },
  ...{ dissent: '', wires: [], review: '', signed: [], note: '' },
});

export const newWire = (id: string, sort: string): WireText => ({
  ...{ id, sort, zone: '', level: '', times: tripwireSortOf(sort)?.seasons ? '2' : '', by: '', words: '' },
});

/** Levels that are areas are typed in the unit of the device. */
const inSquares = (sort: string): boolean => tripwireSortOf(sort)?.unit === 'm2';
const levelOf = (sort: string, level: string): number | undefined =>
  inSquares(sort) ? typedMeasure('area', level) : typedNumber(level);

const wireText = ({ id, sort, zone = '', level, times, by = '', words = '' }: Tripwire): WireText => ({
  ...{ id, sort, zone, by, words },
  level: level === undefined ? '' : inSquares(sort) ? measureTyped('area', level) : numberTyped(level),
  times: times === undefined ? '' : String(times),
});

export const decisionText = (body: Decision): DecisionText => ({
  work: body.sculpture ?? '',
  title: body.title,
  day: body.date,
  option: body.option ?? '',
  chosen: body.chosen,
  refused: body.refused.map(({ option = '', what, why }) => ({ option, what, why })),
  picked: [],
  own: body.evidence.join('\n'),
  consulted: body.consulted,
  dissent: body.dissent ?? '',
  wires: body.tripwires.map(wireText),
  review: body.review ?? '',
  signed: body.signed,
  note: body.note ?? '',
});

/** Fields of a tripwire that are missing or cannot be. */
export const wireFaults = ({
  sort,
  zone,
  level,
  times,
  by,
}: WireText): ReadonlySet<'zone' | 'level' | 'times' | 'by'> => {
  const row = tripwireSortOf(sort);
  const faults = new Set<'zone' | 'level' | 'times' | 'by'>();
  // One of a newer version is kept as it came.
  if (!row) return faults;
  const n = levelOf(sort, level);
  if (row.zone === 'one' && zone === '') faults.add('zone');
  if (row.unit && (n === undefined || n < (row.least ?? 0) || n > (row.most ?? Number.POSITIVE_INFINITY)))
    faults.add('level');
  if (row.seasons && !/^([1-9]|1\d|20)$/.test(times.trim())) faults.add('times');
  if (row.day && by === '') faults.add('by');
  return faults;
};

const wireBody = ({ id, sort, zone, level, times, by, words }: WireText): Tripwire => {
  const row = tripwireSortOf(sort);
  const n = levelOf(sort, level);
  return {
    id,
    sort,
    ...(row?.zone !== 'none' && zone ? { zone } : {}),
    ...((!row || row.unit) && n !== undefined ? { level: n } : {}),
    ...((!row || row.seasons) && times.trim() ? { times: Number(times.trim()) } : {}),
    ...((!row || row.day) && by ? { by } : {}),
    ...(words.trim() ? { words: words.trim() } : {}),
  };
};

const isEmptyRow = ({ what, why }: RefusedText): boolean => what.trim() === '' && why.trim() === '';
export const refusedWhole = (row: RefusedText): boolean =>
  isEmptyRow(row) || (row.what.trim() !== '' && row.why.trim() !== '');

const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim().slice(0, 500))
    .filter(Boolean);

/** The body to keep, or undefined while something is missing. */
export const decisionBody = (text: DecisionText): Decision | undefined => {
  const { title, day, chosen, refused, consulted, signed, wires } = text;
  const whole =
    title.trim() !== '' &&
    day !== '' &&
    chosen.trim() !== '' &&
    refused.every(refusedWhole) &&
    peopleWhole(consulted) &&
    peopleWhole(signed) &&
    wires.every((wire) => wireFaults(wire).size === 0);
  if (!whole) return undefined;
  return {
    sculpture: text.work || undefined,
    date: day,
    title: title.trim(),
    option: text.option || undefined,
    chosen: chosen.trim(),
    refused: refused
      .filter((row) => !isEmptyRow(row))
      .map(({ option, what, why }) => ({ ...(option ? { option } : {}), what: what.trim(), why: why.trim() })),
    evidence: [...new Set([...text.picked, ...linesOf(text.own)])].slice(0, 40),
    consulted: peopleKept(consulted).map((one) => ({ ...one })),
    dissent: text.dissent.trim() || undefined,
    tripwires: wires.map(wireBody),
    review: text.review || undefined,
    signed: peopleKept(signed).map((one) => ({ ...one })),
    note: text.note.trim() || undefined,
  };
};
