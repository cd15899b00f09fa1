import { type SculptureRecord, type Thing, vagueDateOrder } from '../../engine/record';
import { roundTypes, treatmentOf } from '../../engine/trade';
import { list, w } from '../../words';

const words = w.logbook;

interface Line {
  readonly key: string;
  /** As vague as it is known. */
  readonly date: string;
  readonly what: string;
  readonly where: string;
  readonly details: readonly string[];
  readonly note: string | undefined;
}

/** One line of the logbook: something done, a look, or a round. */
export type LogLine =
  | (Line & { readonly kind: 'treatment'; readonly treatment: Thing<'treatment'> })
  | (Line & { readonly kind: 'look'; readonly green: boolean })
  | (Line & { readonly kind: 'round'; readonly round: string; readonly ended: boolean });

const some = (...parts: readonly (string | undefined | false)[]): string[] =>
  parts.filter((part): part is string => Boolean(part));

export const lineOfTreatment = (record: SculptureRecord, treatment: Thing<'treatment'>): LogLine => {
  const { thing: key, body } = treatment;
  const letters = body.zones.map((zone) => record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '?');
  return {
    kind: 'treatment',
    treatment,
    key,
    date: body.date,
    what: treatmentOf(body.type)?.name ?? body.type,
    where:
      letters.length === 0
        ? words.whole
        : letters.length === 1
          ? words.zoneOf(list(letters))
          : words.zonesOf(list(letters)),
    details: some(body.product, body.coats !== undefined && words.coatsOf(String(body.coats)), body.by),
    note: body.note,
  };
};

const lineOfLook = (record: SculptureRecord, { thing, body }: Thing<'look'>): LogLine => {
  const zone = record.zones.find((z) => z.thing === body.zone)?.body;
  return {
    kind: 'look',
    key: thing,
    date: body.date,
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
  what: words.round(roundTypes.find(({ id }) => id === body.type)?.name ?? body.type),
  where: '',
  details: [],
  note: body.note,
});

/** Everything that was done and looked at, the last first. */
export const linesOf = (record: SculptureRecord): readonly LogLine[] =>
  [
    ...record.treatments.map((treatment) => lineOfTreatment(record, treatment)),
    ...record.looks.map((look) => lineOfLook(record, look)),
    ...record.rounds.map(lineOfRound),
  ].sort((a, b) =>
    vagueDateOrder(a.date) < vagueDateOrder(b.date) ? 1 : vagueDateOrder(a.date) > vagueDateOrder(b.date) ? -1 : 0,
  );

/** What was put on last that has a product: what "the same as last time" means. */
export const lastProduct = (record: SculptureRecord, without: string | undefined) =>
  record.treatments
    .filter(({ thing, body }) => thing !== without && body.product && treatmentOf(body.type)?.coats)
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))
    .map(({ body }) => ({ product: body.product ?? '', date: body.date }))[0];
