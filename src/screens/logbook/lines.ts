import type { Planned } from '../../actions';
import { type SculptureRecord, type Thing, vagueDateOrder } from '../../engine/record';
import { roundTypes, treatmentOf } from '../../engine/trade';
import { airText, date, money, w, whenDone, whereDone, whoDid, withWhat } from '../../words';
import type { LastProduct } from './entryText';
import { linesOfPlanned } from './linesOfPlanned';

const words = w.logbook;

export interface Line {
  readonly key: string;
  /** As vague as it is known: what it is sorted by. */
  readonly date: string;
  /** The date in words, or the first and last day of several. */
  readonly when: string;
  readonly what: string;
  readonly where: string;
  readonly details: readonly string[];
  /** What follows from it, each a short sentence. */
  readonly follows?: readonly string[];
  readonly note: string | undefined;
}

/** One line of the logbook: something done, a look, a round, or what happened to the work and where to read on. */
export type LogLine =
  | (Line & { readonly kind: 'treatment'; readonly treatment: Thing<'treatment'> })
  | (Line & { readonly kind: 'look'; readonly green: boolean })
  | (Line & { readonly kind: 'round'; readonly round: string; readonly ended: boolean })
  | (Line & { readonly kind: 'elsewhere'; readonly to: string });

export const some = (...parts: readonly (string | undefined | false)[]): string[] =>
  parts.filter((part): part is string => Boolean(part));

export const lineOfTreatment = (
  record: SculptureRecord,
  treatment: Thing<'treatment'>,
  readings: readonly Thing<'weather'>[],
): LogLine => {
  const { thing: key, body } = treatment;
  const row = treatmentOf(body.type);
  const photos = words.photosOf(body.photosBefore?.length ?? 0, body.photosAfter?.length ?? 0);
  return {
    kind: 'treatment',
    treatment,
    key,
    date: body.date,
    when: whenDone(body),
    what: row?.name ?? body.type,
    where: whereDone(record, body.zones),
    details: some(
      withWhat(body),
      body.coats !== undefined && words.coatsOf(String(body.coats)),
      whoDid(body),
      body.cost && money(body.cost),
      airText(readings.find(({ thing }) => thing === body.weather)),
      photos && words.photos(photos),
    ),
    follows: some(
      body.left && words.leftOf(body.left),
      row?.breaksSeries && words.seriesBreaks,
      row?.coats && words.holdStarts,
    ),
    note: body.note,
  };
};

const lineOfLook = (record: SculptureRecord, { thing, body }: Thing<'look'>): LogLine => {
  const zone = record.zones.find((z) => z.thing === body.zone)?.body;
  return {
    kind: 'look',
    key: thing,
    date: body.date,
    when: date(body.date),
    what: `${words.look}: ${words.results[body.result]}`,
    where: zone ? w.sculptures.zone.edit(zone.letter, zone.name) : '',
    details: some(body.planned && words.planned),
    note: body.note,
    green: body.result === 'green',
  };
};

const lineOfRound = ({ thing, body }: Thing<'round'>): LogLine => ({
  kind: 'round',
  key: thing,
  round: thing,
  ended: body.ended !== undefined,
  date: body.date,
  when: date(body.date),
  what: words.round(roundTypes.find(({ id }) => id === body.type)?.name ?? body.type),
  where: '',
  details: [],
  note: body.note,
});

/** Everything that was done, seen and happened, the last first; of one day, what was written down last. */
export const linesOf = (record: SculptureRecord, planned: Planned): readonly LogLine[] =>
  [
    ...record.treatments.map((treatment) => lineOfTreatment(record, treatment, planned.weather)),
    ...record.looks.map((look) => lineOfLook(record, look)),
    ...record.rounds.map(lineOfRound),
    ...linesOfPlanned(record, planned),
  ]
    .reverse()
    .sort((a, b) =>
      vagueDateOrder(a.date) < vagueDateOrder(b.date) ? 1 : vagueDateOrder(a.date) > vagueDateOrder(b.date) ? -1 : 0,
    );

/** What was put on last that has a product: what "the same as last time" means. Of a tin that is gone only the name is the same. */
export const lastProduct = (
  record: SculptureRecord,
  without: string | undefined,
  products: readonly Thing<'product'>[],
): LastProduct | undefined =>
  record.treatments
    .filter(({ thing, body }) => thing !== without && body.product && treatmentOf(body.type)?.coats)
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))
    .map(({ body: { product = '', batch, stock, date: on } }) => {
      const gone = products.some(({ thing, body }) => thing === stock && body.ended !== undefined);
      return gone ? { product, date: on } : { product, batch, stock, date: on };
    })[0];
