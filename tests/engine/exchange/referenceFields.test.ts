import { expect, test } from 'vitest';
import { referencesOf } from '../../../src/engine/exchange/references';
import { bodySchemas, thingName } from '../../../src/engine/record/schemas';

interface Inner {
  readonly def: {
    readonly type: string;
    readonly shape?: Readonly<Record<string, Inner>>;
    readonly innerType?: Inner;
    readonly element?: Inner;
    readonly items?: readonly Inner[];
    readonly in?: Inner;
  };
}

/** Paths at which a schema takes the name of a thing. */
const namesIn = (schema: Inner, path: readonly string[] = []): string[][] => {
  if (schema === (thingName as unknown as Inner)) return [[...path]];
  const { shape, innerType, element, items, in: from } = schema.def;
  return [
    ...Object.entries(shape ?? {}).flatMap(([key, inner]) => namesIn(inner, [...path, key])),
    ...[innerType, element, from, ...(items ?? [])].flatMap((inner) => (inner ? namesIn(inner, path) : [])),
  ];
};

const bodyWith = (path: readonly string[], name: string): Record<string, unknown> =>
  path.reduceRight<unknown>((inner, key) => ({ [key]: inner }), name) as Record<string, unknown>;

test('no body names another thing in a field that reading and carrying do not know', () => {
  const places = Object.entries(bodySchemas).flatMap(([kind, schema]) =>
    namesIn(schema as unknown as Inner).map((path) => ({ kind, path })),
  );
  expect(places.length).toBeGreaterThan(50);
  for (const { kind, path } of places) {
    const body = bodyWith(path, 'zone/1');
    const found = referencesOf({ body } as unknown as Parameters<typeof referencesOf>[0]);
    expect(
      found.map((r) => r.name),
      `${kind}: ${path.join('.')}`,
    ).toEqual(['zone/1']);
  }
});
