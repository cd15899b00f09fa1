import { type Entry, nameOf } from '../../../src/engine/record';
import { gardenDay } from '../../files/gardenSource';

interface Survey {
  readonly collection: string;
  readonly entries: readonly Entry[];
}

/** The survey with words of hers for one place of a paper. */
export const withOwnText = (survey: Survey, paper: string, about: string, part: string, text: string): Survey => {
  const last = survey.entries.at(-1);
  if (!last) throw new Error('The survey is empty.');
  const entry: Entry = {
    ...last,
    ...{ id: '0192f000-0000-7000-8000-0000000000aa', deed: '0192f000-0000-7000-8000-0000000000ab' },
    ...{ thing: nameOf.paperText(paper, part, about), kind: 'paperText', v: 1, replaces: [] },
    within: survey.collection,
    body: { paper, part, about, text, by: 'Steward', date: gardenDay },
  };
  return { ...survey, entries: [...survey.entries, entry] };
};
