import type { Entry } from './entry';

const rank = (order: readonly string[], word: unknown): number => order.indexOf(String(word));

const share = (body: Entry['body']): number => {
  const value = (body.coverage as { value?: unknown } | undefined)?.value;
  return typeof value === 'number' ? value : -1;
};

/** What makes one version worse than another, most telling first. Kinds not here are not weighed. */
const weighed: Readonly<Record<string, (body: Entry['body']) => readonly number[]>> = {
  finding: (b) => [
    b.cleared ? 0 : 1,
    rank(['slight', 'moderate', 'severe'], b.severity),
    rank(['stable', 'unclear', 'active'], b.activity),
    share(b),
    rank(['one', 'two to five', 'more'], b.count),
  ],
  visit: (b) => [rank(['not looked', 'carried', 'nothing', 'found'], b.state)],
  look: (b) => [rank(['clear', 'unsure', 'green'], b.result)],
  personCheck: (b) => [b.closed ? 0 : 1],
};

/** Above 0 where `a` tells of something worse than `b`, below 0 the other way, 0 where that cannot be said. */
export const worse = (a: Entry, b: Entry): number => {
  const weigh = a.kind === b.kind && Object.hasOwn(weighed, a.kind) ? weighed[a.kind] : undefined;
  if (!weigh) return 0;
  const other = weigh(b.body);
  for (const [i, value] of weigh(a.body).entries()) {
    const difference = value - (other[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};
