import type { PaperSort } from '../../src/papers/layout';
import { paperSorts } from '../../src/papers/registry';
import { gardenSurvey, sourceOf } from './gardenSource';

export interface PaperOfGarden {
  readonly sort: PaperSort;
  /** Thing name, or what else the paper is about. */
  readonly about: string;
  readonly label: string;
  /** Where the app shows it. */
  readonly hash: string;
}

/** Everything of the invented garden that a paper can be made of, kind by kind. */
export const papersOfGarden = (): readonly PaperOfGarden[] => {
  const source = sourceOf(gardenSurvey());
  return paperSorts.flatMap((sort) =>
    sort.choices(source).map(({ about, label }) => ({
      sort,
      about,
      label,
      hash: `#/papers/${sort.id}/${encodeURIComponent(about)}`,
    })),
  );
};

/** One of each kind. */
export const onePaperOfEach = (): readonly PaperOfGarden[] =>
  papersOfGarden().filter(({ sort }, i, all) => all.findIndex((one) => one.sort === sort) === i);
