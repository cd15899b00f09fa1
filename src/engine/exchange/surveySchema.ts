import * as z from 'zod/mini';
import { bodySchemas, entrySchema } from '../record/schemas';
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

const plain = (schema: z.core.$ZodType): Json => {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    unrepresentable: 'any',
    io: 'input',
  });
  return rest as Json;
};

/**
 * The portable survey as JSON Schema 2020-12, made from the schemas that read it. Kinds are open: an entry of a kind not named here
 * is kept as it came. What a schema cannot say (names that fit their bodies, replacement without circles) `readSurvey` judges.
 */
export const surveySchema = (): Json => {
  const kinds = Object.entries(bodySchemas);
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
        ...plain(entrySchema),
        // The empty body of a thing taken away is not judged, nor one of a later version.
        allOf: kinds.map(([kind]) => ({
          if: { properties: { kind: { const: kind }, v: { const: 1 } }, not: saysNothing },
          // biome-ignore lint/suspicious/noThenProperty: the word JSON Schema has for it
          then: { properties: { body: { $ref: `#/$defs/${kind}` } } },
        })),
      },
      ...Object.fromEntries(
        kinds.map(([kind, schema]) => [
          kind,
          { ...plain(schema), ...(meaning[kind] ? { description: meaning[kind] } : {}) },
        ]),
      ),
    },
  };
};
