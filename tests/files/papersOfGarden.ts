import { type PaperSort, picturesIn, textOf } from '../../src/papers/layout';
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

/** What a picture takes on a sheet, in letters that would stand in its place: about an eighth of a page. */
const lettersOfPicture = 400;

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

/** The one of each kind that has most to set, where there are several: it is the first to run over its pages. */
export const longestOfEach = (): readonly PaperOfGarden[] => {
  const source = sourceOf(gardenSurvey());
  const size = ({ sort, about }: PaperOfGarden): number => {
    const body = sort.make(source, about)?.body;
    return textOf(body).length + picturesIn(body).length * lettersOfPicture;
  };
  const all = papersOfGarden();
  return paperSorts.flatMap((sort) => {
    const [longest, ...others] = all.filter((one) => one.sort === sort).sort((a, b) => size(b) - size(a));
    return longest && others.length > 0 ? [longest] : [];
  });
};

/** One of each kind. */
export const onePaperOfEach = (): readonly PaperOfGarden[] =>
  papersOfGarden().filter(({ sort }, i, all) => all.findIndex((one) => one.sort === sort) === i);
