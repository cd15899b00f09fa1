import {
  assemble,
  type BodyOf,
  byWithin,
  type Current,
  dayRange,
  type Entry,
  gather,
  idPart,
  nameOf,
  type SculptureRecord,
  type Thing,
} from '../record';
import { kindOf, originOf, roundTypes, severityOf, treatmentOf } from '../trade';
import { linkedArtContext } from './linkedArtContext';

type Json = { readonly [field: string]: unknown };

const urn = (thing: string): string => `urn:patina-round:${encodeURI(thing)}`;

const type = (group: string, id: string, label: string): Json => ({
  id: urn(`${group}/${id}`),
  type: 'Type',
  _label: label,
});

const name = (content: string): Json => ({ type: 'Name', content });

const said = (content: string | undefined): Json =>
  content ? { referred_to_by: [{ type: 'LinguisticObject', content }] } : {};

/** The days a date may mean; what cannot be read as days stays a name of the time. */
const timeSpan = (vague: string): Json => {
  const { from, to } = dayRange(vague);
  return {
    type: 'TimeSpan',
    identified_by: [name(vague)],
    ...(from === '0000' ? {} : { begin_of_the_begin: `${from}T00:00:00Z` }),
    ...(to === '9999' ? {} : { end_of_the_end: `${lastOfMonth(to)}T23:59:59Z` }),
  };
};

/** A range of days counts every month to its 31st; an instant has to be one there is. */
const lastOfMonth = (day: string): string => {
  const [year = 0, month = 1] = day.split('-').map(Number);
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 31;
  return Number(day.slice(8)) > days ? `${day.slice(0, 8)}${String(days)}` : day;
};

const perCent: Json = { id: urn('unit/percent'), type: 'MeasurementUnit', _label: 'per cent of the zone' };
const per100 = (share: number): number => Math.round(share * 100_000) / 1000;

const coverage = ({ value, low, high, method }: NonNullable<BodyOf<'finding'>['coverage']>): Json => ({
  type: 'Dimension',
  _label: `coverage, ${method}`,
  classified_as: [type('dimension', 'coverage', 'coverage')],
  value: per100(value),
  lower_value_limit: per100(low),
  upper_value_limit: per100(high),
  unit: perCent,
});

const condition = ({ thing, body }: Thing<'finding'>): Json => {
  const kind = type('kind', body.kind, kindOf(body.kind)?.name ?? body.kind);
  return {
    id: urn(thing),
    type: 'ConditionState',
    _label: body.cleared ? `${String(kind._label)}: looked for, no longer there` : String(kind._label),
    classified_as: [
      kind,
      type('origin', body.origin, originOf(body.origin)?.name ?? body.origin),
      type('severity', body.severity, severityOf(body.severity)?.name ?? body.severity),
    ],
    ...said(body.note),
  };
};

/** How much of a zone a condition covers: CRM measures things, not states, so it stands beside the state. */
const measured = ({ body }: Thing<'finding'>): Json[] => {
  if (!body.coverage) return [];
  const kind = kindOf(body.kind)?.name ?? body.kind;
  return [
    {
      type: 'Measurement',
      _label: `coverage: ${kind}`,
      classified_as: [type('kind', body.kind, kind)],
      measured: [{ id: urn(body.zone), type: 'HumanMadeObject' }],
      observed_dimension: [coverage(body.coverage)],
    },
  ];
};

const zoneOf = (sculpture: string, { thing, body }: Thing<'zone'>): Json => ({
  id: urn(thing),
  type: 'HumanMadeObject',
  _label: `${body.letter}, ${body.name}`,
  identified_by: [name(body.name), { type: 'Identifier', content: body.letter }],
  part_of: [{ id: urn(sculpture), type: 'HumanMadeObject' }],
});

const objectOf = ({ sculpture: { thing, body }, zones }: SculptureRecord, sides: readonly Json[]): Json[] => [
  {
    id: urn(thing),
    type: 'HumanMadeObject',
    _label: body.title,
    identified_by: [name(body.title), { type: 'Identifier', content: body.number }],
    ...(body.materials ? { made_of: [{ type: 'Material', _label: body.materials }] } : {}),
    ...(body.maker || body.date
      ? {
          produced_by: {
            type: 'Production',
            ...(body.date ? { timespan: timeSpan(body.date) } : {}),
            ...said(body.maker),
          },
        }
      : {}),
    ...(sides.length > 0 ? { representation: sides } : {}),
    ...said(body.note),
  },
  ...zones.map((zone) => zoneOf(thing, zone)),
];

/** One walk round a work is one assessment; what it found in a zone is an assessment within it, and what it found, a condition. */
const assessmentsOf = (record: SculptureRecord, people: ReadonlyMap<string, Json>): Json[] =>
  record.rounds.map(({ thing, body }) => {
    const inZone = new Map<string, Thing<'finding'>[]>();
    for (const visit of record.visits) if (visit.body.round === thing) inZone.set(visit.body.zone, []);
    for (const finding of record.findings)
      if (finding.body.round === thing && !finding.body.carriedFrom) inZone.get(finding.body.zone)?.push(finding);
    const kind = roundTypes.find(({ id }) => id === body.type)?.name ?? body.type;
    return {
      id: urn(thing),
      type: 'ConditionAssessment',
      _label: `${kind}, ${body.date}`,
      classified_as: [type('round', body.type, kind)],
      timespan: timeSpan(body.date),
      ...(people.has(body.surveyor) ? { carried_out_by: [people.get(body.surveyor)] } : {}),
      concerned: [{ id: urn(record.sculpture.thing), type: 'HumanMadeObject' }],
      ...said(body.note),
      part: [...inZone].map(([zone, findings]) => {
        const state = record.visits.find((v) => v.body.round === thing && v.body.zone === zone)?.body;
        return {
          id: urn(nameOf.visit(thing, zone)),
          type: 'ConditionAssessment',
          _label: state?.state ?? 'found',
          concerned: [{ id: urn(zone), type: 'HumanMadeObject' }],
          ...(findings.length > 0 ? { identified: findings.map(condition), part: findings.flatMap(measured) } : {}),
          ...said(state?.note),
        };
      }),
    };
  });

const treatmentsOf = ({ sculpture, treatments }: SculptureRecord): Json[] =>
  treatments.map(({ thing, body }) => {
    const what = treatmentOf(body.type)?.name ?? body.type;
    const on = body.zones.length > 0 ? body.zones : [sculpture.thing];
    return {
      id: urn(thing),
      type: 'Modification',
      _label: `${what}, ${body.date}`,
      technique: [type('treatment', body.type, what)],
      timespan: timeSpan(body.date),
      modified: on.map((each) => ({ id: urn(each), type: 'HumanMadeObject' })),
      ...(body.product ? { employed: [{ type: 'Material', _label: body.product }] } : {}),
      ...(body.by ? { carried_out_by: [{ type: 'Actor', _label: body.by }] } : {}),
      ...said(body.note),
    };
  });

const peopleIn = (currents: ReadonlyMap<string, Current>): Map<string, Json> => {
  const people = new Map<string, Json>();
  for (const { kind, thing, gone, lead } of currents.values()) {
    if (kind !== 'surveyor' || gone) continue;
    const called = currents.get(nameOf.personName(thing));
    const label = called && !called.gone ? String(called.lead.body.name) : String(lead.body.role);
    people.set(thing, { id: urn(thing), type: 'Person', _label: label });
  }
  return people;
};

/**
 * The survey in the terms collections exchange descriptions in: objects (works, and zones as parts of them), condition assessments
 * and treatments, as JSON-LD 1.1 in terms of CIDOC CRM 7.1 (ISO 21127), under the names Linked Art has for them where it has one.
 * The context lies in the file: no address has to be asked to read it. Only what was seen and done is in it, no thoughts and no figures
 * worked out. Ids are URNs of the survey's own things.
 */
export const linkedArt = (collection: string, entries: Iterable<Entry>): Json => {
  const currents = assemble(entries);
  const within = byWithin(currents.values());
  const people = peopleIn(currents);
  const records = [...within].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, own]) => gather(own) ?? []);
  const called = currents.get(collection)?.lead.body.name;
  return {
    '@context': linkedArtContext,
    '@graph': [
      { id: urn(collection), type: 'Set', _label: String(called ?? '') || idPart(collection) },
      ...records.flatMap((record) => [
        ...objectOf(record, picturesOf(within.get(record.sculpture.thing) ?? [])),
        ...assessmentsOf(record, people),
        ...treatmentsOf(record),
      ]),
    ],
  };
};

/** Photos by what they are, with the address they have inside a bag. */
const picturesOf = (own: readonly Current[]): Json[] =>
  own
    .filter(({ kind, gone }) => kind === 'photo' && !gone)
    .map(({ thing, lead: { body } }) => ({
      id: urn(thing),
      type: 'VisualItem',
      _label: String(body.role),
      ...(typeof body.taken === 'string'
        ? { referred_to_by: [{ type: 'LinguisticObject', content: body.taken }] }
        : {}),
    }));
