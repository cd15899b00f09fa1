import { type Seeded, seeded } from './seeded';

/** What a person, a faulty program or somebody ill-willed may put where something else belongs, as it stands in a file. */
const oddTokens: readonly string[] = [
  ...['null', 'true', 'false', '0', '-0', '-1', '1', '1.5', '101', '0.1e1', '1e-400', '1e999', '-1e999', '4294967296'],
  ...['9007199254740993', '1e21', '01', '+1', '.5', '1.', 'NaN', 'Infinity', 'undefined', "'x'", '/* */', '// \n'],
  ...[
    '""',
    '" "',
    '"\\ud800"',
    '"\\udfff x"',
    '"\\u0000"',
    '"\\u202e"',
    '"\\ud83d\\ude00"',
    '"__proto__"',
    '"constructor"',
  ],
  ...[
    '"../../etc/passwd"',
    '"C:\\\\CON"',
    '"<script>alert(1)</script>"',
    '"=cmd()"',
    '"javascript:alert(1)"',
    '"\\x41"',
  ],
  ...[
    '"9999-12-31"',
    '"0000-01-01"',
    '"2026-02-30"',
    '"2026-05-12"',
    '"yesterday"',
    '"2026-05-12T24:61:00Z"',
    '"0000-00-00T00:00:00Z"',
  ],
  ...['[]', '{}', '[[]]', '[null]', '{"":0}', '{"__proto__":{"mine":1}}', '{"constructor":{"prototype":{"mine":1}}}'],
  ...[
    '{"toString":1,"valueOf":2}',
    '{"length":4294967295}',
    '{"a":1,"a":2}',
    '{"a":1,"\\u0061":2}',
    '[1,2,3]',
    ',',
    ':',
    ']',
    '}',
  ],
  `"${'x'.repeat(5000)}"`,
  `[${'0,'.repeat(3000)}0]`,
  `${'['.repeat(40)}${']'.repeat(40)}`,
  '['.repeat(5000),
  '{"a":'.repeat(5000),
];
const oddNames = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'length',
  '',
  'id',
  'body',
  'kind',
  'thing',
  '\u202e',
  'x'.repeat(300),
];

type Json = null | boolean | number | string | Json[] | { [name: string]: Json } | Raw;

/** A token that goes into the text as it stands. */
class Raw {
  readonly token: string;
  constructor(token: string) {
    this.token = token;
  }
}

const written = (value: Json): string => {
  if (value instanceof Raw) return value.token;
  if (Array.isArray(value)) return `[${value.map(written).join(',')}]`;
  if (typeof value === 'object' && value !== null)
    return `{${Object.entries(value)
      .map(([name, each]) => `${JSON.stringify(name)}:${written(each)}`)
      .join(',')}}`;
  return JSON.stringify(value) ?? 'null';
};

interface Place {
  readonly parent: Json[] | { [name: string]: Json };
  readonly key: number | string;
}

const isTree = (value: Json | undefined): value is Json[] | { [name: string]: Json } =>
  typeof value === 'object' && value !== null && !(value instanceof Raw);

/** Every place in the tree, without recursion. */
const placesIn = (root: Json): Place[] => {
  const places: Place[] = [];
  const open: Json[] = [root];
  for (let tree = open.pop(); tree !== undefined; tree = open.pop()) {
    if (!isTree(tree)) continue;
    const parent = tree;
    for (const key of Array.isArray(parent) ? parent.keys() : Object.keys(parent)) {
      places.push({ parent, key });
      open.push((parent as never)[key]);
    }
  }
  return places;
};

const put = ({ parent, key }: Place, value: Json): void =>
  void Object.defineProperty(parent, key, { value, enumerable: true, configurable: true, writable: true });
const at = ({ parent, key }: Place): Json => (parent as never)[key];
const remove = ({ parent, key }: Place): void => {
  if (Array.isArray(parent)) parent.splice(Number(key), 1);
  else delete parent[key];
};

/** Alterations of what a file says. Each gives the tree it is handed, altered. */
const ofTree: readonly ((root: Json, draw: Seeded) => void)[] = [
  (root, draw) => put(draw.pick(placesIn(root)), new Raw(draw.pick(oddTokens))),
  (root, draw) => put(draw.pick(placesIn(root)), new Raw(draw.pick(oddTokens))),
  (root, draw) => remove(draw.pick(placesIn(root))),
  (root, draw) => {
    const places = placesIn(root);
    put(draw.pick(places), structuredCloned(at(draw.pick(places))));
  },
  (root, draw) => {
    const places = placesIn(root);
    const [one, two] = [draw.pick(places), draw.pick(places)];
    const kept = structuredCloned(at(one));
    put(one, structuredCloned(at(two)));
    put(two, kept);
  },
  (root, draw) => {
    const place = draw.pick(placesIn(root));
    if (Array.isArray(place.parent)) return void place.parent.push(structuredCloned(at(place)));
    const value = at(place);
    remove(place);
    put({ parent: place.parent, key: draw.pick(oddNames) }, value);
  },
  (root, draw) => {
    const place = draw.pick(placesIn(root));
    put(place, draw.next() < 0.5 ? [at(place)] : { [draw.pick(oddNames)]: at(place) });
  },
  (root, draw) => {
    const place = draw.pick(placesIn(root));
    const value = at(place);
    if (typeof value === 'number')
      put(place, draw.pick([value * -1, value + 1, value * 1e6, value / 3, Math.round(value)]));
    else if (typeof value === 'string') put(place, textAltered(value, draw));
    else if (Array.isArray(value)) put(place, [...value, ...value].slice(0, 50));
  },
];

const structuredCloned = (value: Json): Json =>
  value instanceof Raw
    ? value
    : Array.isArray(value)
      ? value.map(structuredCloned)
      : isTree(value)
        ? Object.fromEntries(Object.entries(value).map(([name, each]) => [name, structuredCloned(each)]))
        : value;

const textAltered = (text: string, draw: Seeded): string => {
  const i = draw.below(text.length + 1);
  const sign = draw.pick(['/', '-', '0', 'f', ' ', '\ud800', '\u0301', '\u0000', 'é', '😀', '.']);
  return draw.pick([
    text.slice(0, i),
    text.slice(0, i) + sign + text.slice(i),
    text.toUpperCase(),
    text + text,
    text.slice(0, i) + sign + text.slice(i + 1),
  ]);
};

const textsIn = (root: Json, of: (text: string) => boolean): string[] =>
  placesIn(root)
    .map(at)
    .filter((value): value is string => typeof value === 'string' && of(value));

const isId = (text: string): boolean => /^[0-9a-f]{8}-/.test(text);

type Fields = { [name: string]: Json };

const nobody = '019e7044-8800-7000-8000-00000000ffff';

/** Alterations of what entries say of each other, and of what a schema alone lets pass. */
const ofEntries: readonly ((root: Fields, entry: Fields, draw: Seeded) => void)[] = [
  (root, entry, draw) => {
    const ids = [...textsIn(root, isId), nobody];
    entry.replaces = Array.from({ length: draw.below(3) + 1 }, () => draw.pick(ids));
  },
  (root, entry, draw) => {
    entry.restores = draw.pick([...textsIn(root, isId), nobody]);
  },
  (_, entry, draw) => {
    entry.gone = draw.next() < 0.9 ? true : draw.pick([false, 1, 'true', null]);
    if (draw.next() < 0.3) entry.body = {};
  },
  (root, entry, draw) => {
    const twin = structuredCloned(entry) as Fields;
    const body = placesIn(twin.body ?? {});
    if (draw.next() < 0.7 && body.length > 0) put(draw.pick(body), draw.pick<Json>([0, 1, 'x', true]));
    if (draw.next() < 0.3) twin.id = draw.pick([...textsIn(root, isId), nobody]);
    if (Array.isArray(root.entries)) root.entries.push(twin);
  },
  (root, entry, draw) => {
    const id = `019e7044-8800-7000-8000-${String(draw.below(1e9)).padStart(12, '0')}`;
    const gone = Array.from({ length: draw.below(4) }, () => draw.pick([...textsIn(root, isId), nobody]));
    const hashes = ['ab'.repeat(32)].slice(draw.below(2));
    const body = { of: 'photo', entries: gone, hashes, reason: 'x', date: '2026-05-20' };
    const made = { id, thing: `erasure/${id}`, kind: 'erasure', within: String(root.collection), replaces: [], body };
    if (Array.isArray(root.entries)) root.entries.push({ ...(structuredCloned(entry) as Fields), ...made });
  },
  (root, entry, draw) => {
    entry.kind = draw.pick([...textsIn(root, (text) => /^[a-zA-Z]{4,12}$/.test(text)), 'lantern']);
    if (draw.next() < 0.5) entry.thing = `${entry.kind}/x`;
  },
  (_, entry, draw) => {
    entry.v = draw.pick([0, 1, 2, 9, 1.5]);
  },
  (root, entry, draw) => {
    const names = textsIn(root, (text) => /^[a-zA-Z]+\/./.test(text));
    const places = placesIn(entry).filter((place) => names.includes(String(at(place))));
    if (places.length > 0) put(draw.pick(places), draw.pick(names));
  },
  (_, entry, draw) => {
    const places = placesIn(entry.body ?? {}).filter((place) => typeof at(place) === 'number');
    if (places.length > 0) put(draw.pick(places), draw.pick([0, -0, 0.5, 1, -1, 1e-300, 1e9, 2 ** 53]));
  },
  (_, entry, draw) => {
    const { body } = entry;
    if (isTree(body) && !Array.isArray(body))
      body[draw.pick(['tide', 'note', 'partOf', 'split', 'joined'])] = draw.pick<Json>(['x', 1, [], {}]);
  },
];

/** Alterations of how a file is written. */
const ofText: readonly ((text: string, draw: Seeded) => string)[] = [
  (text, draw) => text.slice(0, draw.below(text.length + 1)),
  (text, draw) => {
    const [i, n] = [draw.below(text.length + 1), draw.below(40)];
    return text.slice(0, i) + text.slice(i + n);
  },
  (text, draw) => {
    const [i, n] = [draw.below(text.length + 1), draw.below(200)];
    return text.slice(0, i) + text.slice(i, i + n) + text.slice(i);
  },
  (text, draw) => {
    const i = draw.below(text.length + 1);
    return text.slice(0, i) + draw.pick(oddTokens) + text.slice(i);
  },
  (text, draw) => {
    const i = draw.below(text.length + 1);
    return text.slice(0, i) + String.fromCharCode(draw.below(draw.next() < 0.7 ? 128 : 65536)) + text.slice(i + 1);
  },
  (text, draw) =>
    draw.pick(['\ufeff', ' ', '\u00a0', '\n', '\u0000', '[', 'x']) +
    text +
    draw.pick(['', '\n', '\u0000', '}', ',{}', text]),
];

/** Alterations of the bytes themselves. */
const ofBytes: readonly ((bytes: Uint8Array, draw: Seeded) => Uint8Array)[] = [
  (bytes, draw) => {
    const altered = bytes.slice();
    for (let n = draw.below(4) + 1; n > 0; n--) altered[draw.below(altered.length)] = draw.below(256);
    return altered;
  },
  (bytes, draw) => {
    const altered = bytes.slice();
    const i = draw.below(altered.length);
    altered[i] = (altered[i] ?? 0) ^ (1 << draw.below(8));
    return altered;
  },
  (bytes, draw) => bytes.slice(draw.below(bytes.length), draw.below(bytes.length) + 1),
];

/**
 * The n-th mutant of some good files: one to four alterations, most of them of what the file says. Half of them come without the check
 * sum, so that the faults behind it are met; `checked` puts the right one in.
 */
export const mutant = (
  good: readonly string[],
  seed: number,
  n: number,
  checked: (rest: string) => string,
): Uint8Array => {
  const draw = seeded(Math.imul(seed, 0x9e3779b1) ^ Math.imul(n + 1, 0x85ebca6b));
  const base = draw.pick(good);
  const tree = JSON.parse(base) as { [name: string]: Json };
  const way = draw.next();
  if (way < 0.75) delete tree.check;
  const times = (most: number, alter: () => void) => {
    for (let n = draw.below(most) + 1; n > 0; n--) alter();
  };
  const anEntry = (): Json | undefined =>
    Array.isArray(tree.entries) && tree.entries.length > 0 ? draw.pick(tree.entries) : undefined;
  if (way < 0.45) {
    times(3, () => {
      const entry = anEntry();
      if (isTree(entry) && !Array.isArray(entry)) draw.pick(ofEntries)(tree, entry, draw);
    });
  } else if (way < 0.85) {
    const part = (draw.next() < 0.8 ? anEntry() : undefined) ?? tree;
    times(2, () => {
      if (placesIn(part).length > 0) draw.pick(ofTree)(part, draw);
    });
  }
  let text = way < 0.85 ? written(tree) : base;
  if (way >= 0.65 && way < 0.75) text = checked(text.slice(1));
  if (way >= 0.78)
    times(2, () => {
      text = draw.pick(ofText)(text, draw);
    });
  const bytes = new TextEncoder().encode(text);
  return way >= 0.94 && bytes.length > 0 ? draw.pick(ofBytes)(bytes, draw) : bytes;
};
