import { describe, expect, it } from 'vitest';
import { holdsWords, inOwnWords, withWords } from '../../../src/engine/record';
import { bodySchemas } from '../../../src/engine/record/schemas';

describe('Words that are to go', () => {
  it.each([
    ['Ann Lee said so', 'Steward said so'],
    ['by ANN LEE.', 'by Steward.'],
    ['Ann\n Lee’s ladder', 'Steward’s ladder'],
    ['(Ann Lee)', '(Steward)'],
    ['Ann Leek and Joann Lee', 'Ann Leek and Joann Lee'],
    ['Ann, Lee', 'Ann, Lee'],
    ['Ann Lee, Ann Lee', 'Steward, Steward'],
  ])('are found whole, in whatever case: %s', (text, said) => {
    expect(withWords(text, 'Ann Lee', 'Steward')).toBe(said);
    expect(holdsWords(text, 'Ann Lee')).toBe(text !== said);
  });

  it('with signs that mean something to a pattern are taken as they stand', () => {
    expect(withWords('the J. (Jo) O’Neill-Ødegård+ way', 'J. (Jo) O’Neill-Ødegård+', '$&')).toBe('the $& way');
    expect(holdsWords('JX (Jo)', 'J. (Jo)')).toBe(false);
  });

  it('are found however the letters with marks were written', () => {
    expect(holdsWords('Mrs O\u0308do\u0308n', '\u00d6d\u00f6n')).toBe(true);
  });

  it('leave everything else the very same value', () => {
    const value = { note: 'nothing', list: [1, { by: 'x' }], bytes: new Uint8Array(2) };
    expect(withWords(value, 'Ann', 'Steward')).toBe(value);
    const named = { note: 'Ann', keep: { deep: [1] } };
    const said = withWords(named, 'Ann', 'Steward') as typeof named;
    expect(said).toEqual({ note: 'Steward', keep: { deep: [1] } });
    expect(said.keep).toBe(named.keep);
  });

  it('in codes, names of things and days stay: they keep their meaning only letter by letter', () => {
    const body = { kind: 'green', zone: 'zone/green', by: 'Green', closed: { by: 'green', on: '2026-01-01' } };
    expect(withWords(body, 'green', 'Steward', inOwnWords)).toEqual({
      ...body,
      by: 'Steward',
      closed: { by: 'Steward', on: '2026-01-01' },
    });
  });
});

interface Inner {
  readonly def: {
    readonly type: string;
    readonly format?: string;
    readonly shape?: Readonly<Record<string, Inner>>;
    readonly innerType?: Inner;
    readonly element?: Inner;
    readonly items?: readonly Inner[];
    readonly in?: Inner;
    readonly checks?: readonly { readonly _zod: { readonly def: { readonly check: string } } }[];
  };
}

/** Paths at which a schema takes a text with no more said of it than its length. */
const freeTexts = ({ def }: Inner, path: readonly string[] = []): string[][] => {
  const checks = def.checks?.map((c) => c._zod.def.check) ?? [];
  if (def.type === 'string' && def.format === undefined && checks.every((c) => c === 'max_length')) return [[...path]];
  return [
    ...Object.entries(def.shape ?? {}).flatMap(([key, inner]) => freeTexts(inner, [...path, key])),
    ...[def.innerType, def.element, def.in, ...(def.items ?? [])].flatMap((inner) =>
      inner ? freeTexts(inner, path) : [],
    ),
  ];
};

/** Texts that are codes, whatever their schema allows, and dates as vague as they are known. */
const codes = new Set([
  'allowed',
  'checked',
  'equipment',
  'forbidden',
  'key',
  'of',
  'paper',
  'part',
  'state',
  'sort',
  'step',
  'item',
  'topic',
  'tripwires.sort',
  'date',
  'exposure',
  'kind',
  'letter',
  'mime',
  'reach',
  'reason',
  'selector.value',
  'substrate',
  'surveyor',
  'taken',
  'type',
  'value',
]);

it('every text field of every kind is either somebody’s own words or known to be none', () => {
  const paths = Object.entries(bodySchemas).flatMap(([kind, schema]) =>
    freeTexts(schema as unknown as Inner).map((path) => ({ kind, path })),
  );
  expect(paths.length).toBeGreaterThan(60);
  const neither = paths.filter(({ path }) => !inOwnWords(path) && !codes.has(path[path.length - 1] ?? ''));
  expect(neither.map(({ kind, path }) => `${kind}: ${path.join('.')}`)).toEqual([]);
  const both = paths.filter(({ path }) => inOwnWords(path) && codes.has(path[path.length - 1] ?? ''));
  expect(both).toEqual([]);
});
