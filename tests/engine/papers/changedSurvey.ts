import type { Entry } from '../../../src/engine/record';

interface Survey {
  readonly collection: string;
  readonly entries: readonly Entry[];
}

/** The survey as it is when these kinds of thing stay at home. */
export const without = (survey: Survey, kinds: readonly string[]): Survey => ({
  ...survey,
  entries: survey.entries.filter(({ kind }) => !kinds.includes(kind)),
});

/** The survey with bodies said otherwise. */
export const hostileIn = (
  survey: Survey,
  otherwise: (kind: string, body: Record<string, unknown>) => Record<string, unknown>,
): Survey => ({
  ...survey,
  entries: survey.entries.map((entry) => ({ ...entry, body: otherwise(entry.kind, { ...entry.body }) })) as Entry[],
});
