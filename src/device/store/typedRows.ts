import { type Entry, holdsWords, withAnyWords } from '../../engine/record';
import type { MetaRow, Tables } from './database';

/** Meta rows that hold what was typed into a form and not kept begin so; the form and its things follow. */
export const typedStart = 'typed ';

/**
 * Inside a transaction: a name that went for good goes from what was typed and not kept too, its role put in its place. All of a form is
 * looked into: which of its texts are a person's own words is not known here.
 */
export const typedWithout = async (t: Tables, gone: readonly Entry[]): Promise<void> => {
  const names = gone.filter(({ kind }) => kind === 'name');
  if (names.length === 0) return;
  const rows = await t.meta.where('key').startsWith(typedStart).toArray();
  for (const surveyor of new Set(names.map(({ body }) => String(body.surveyor)))) {
    const words = names.flatMap(({ body }) =>
      body.surveyor === surveyor && typeof body.name === 'string' && body.name.trim() ? [body.name] : [],
    );
    const role = String((await t.current.get(surveyor))?.lead.body.role ?? '');
    const put = role === '' || words.some((each) => holdsWords(role, each)) ? '—' : role;
    for (const [i, row] of rows.entries())
      rows[i] = { key: row.key, value: withAnyWords(row.value, words, put) } satisfies MetaRow;
  }
  await t.meta.bulkPut(rows);
};
