import * as z from 'zod/mini';
import {
  bodySchemas,
  coverageBody,
  day,
  entrySchema,
  fraction,
  instant,
  moneySchema,
  personInRole,
  pointBody,
  thingName,
  uuid,
} from '../record/schemas';
import { format, version } from './limits';

const meaning: Readonly<Record<string, string>> = {
  visit: 'What was recorded at one zone in one round.',
  finding: 'One kind of deterioration seen in one zone in one round; coverage is a share of the zone, 0 to 1.',
  zone: 'A part surveyed as one; areas in m2, with their range.',
  round: 'One survey walk around one sculpture; `date` is the day a person confirmed.',
};

type Json = Record<string, unknown>;

/** An entry that takes a thing away and leaves its body empty. */
const saysNothing: Json = { required: ['gone'], properties: { body: { maxProperties: 0 } } };

/** What many bodies hold, by the name it stands under in the schema: said once, and pointed to. */
const named = z.registry<{ id: string }>();
const shared = {
  coverage: coverageBody,
  day,
  fraction,
  instant,
  money: moneySchema,
  personInRole,
  point: pointBody,
  thingName,
  uuid,
};
for (const [id, schema] of Object.entries(shared)) named.add(schema, { id });

const plain = (schema: z.core.$ZodType): { readonly own: Json; readonly pointedTo: Json } => {
  const {
    $schema: _,
    $defs: pointedTo = {},
    ...own
  } = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    unrepresentable: 'any',
    io: 'input',
    metadata: named,
    override: ({ jsonSchema }) => {
      // Fields of later versions may be anything, which is what a schema says by saying nothing.
      if (JSON.stringify(jsonSchema.additionalProperties) === '{}') delete jsonSchema.additionalProperties;
    },
  }) as Json & { $defs?: Json };
  return { own, pointedTo };
};

/**
 * The portable survey as JSON Schema 2020-12, made from the schemas that read it. Kinds are open: an entry of a kind not named here
 * is kept as it came. What a schema cannot say (names that fit their bodies, replacement without circles) `readSurvey` judges.
 */
export const surveySchema = (): Json => {
  const entry = plain(entrySchema);
  const kinds = Object.entries(bodySchemas).map(([kind, schema]) => ({ kind, ...plain(schema) }));
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:${format}:${version}`,
    title: 'Patina Round survey',
    description:
      'One condition survey of outdoor bronzes: entries that are never changed, sorted by id; written by RFC 8785.',
    type: 'object',
    required: ['format', 'version', 'collection', 'entries'],
    properties: {
      check: { type: 'string', description: 'CRC-32 of all that follows its comma, as written.' },
      format: { const: format },
      version: { type: 'string', pattern: `^${version.split('.')[0]}\\.[0-9]{1,4}$` },
      collection: { type: 'string', pattern: '^collection/.+$' },
      entries: { type: 'array', items: { $ref: '#/$defs/entry' } },
    },
    $defs: {
      entry: {
        ...entry.own,
        // The empty body of a thing taken away is not judged, nor one of a later version.
        if: { properties: { v: { const: 1 } }, not: saysNothing },
        // biome-ignore lint/suspicious/noThenProperty: the word JSON Schema has for it
        then: {
          allOf: kinds.map(({ kind }) => ({
            if: { properties: { kind: { const: kind } } },
            // biome-ignore lint/suspicious/noThenProperty: the word JSON Schema has for it
            then: { properties: { body: { $ref: `#/$defs/${kind}` } } },
          })),
        },
      },
      ...Object.fromEntries(
        kinds.map(({ kind, own }) => [kind, { ...own, ...(meaning[kind] ? { description: meaning[kind] } : {}) }]),
      ),
      ...Object.assign({}, entry.pointedTo, ...kinds.map(({ pointedTo }) => pointedTo)),
    },
  };
};
