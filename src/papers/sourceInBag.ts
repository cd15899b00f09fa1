import type { BagContents } from '../device/bag';
import { stateOfAll, stateOfThings } from '../device/stateOfThings';
import { firstPass, lives as livesFrom, type PaperSource, secondPass } from '../engine/reckoning';
import type { Current } from '../engine/record';
import { surveyRead } from './surveyRead';

/** What papers read, from the entries that go into a bag: the figures are worked out anew. */
export const sourceInBag = (contents: BagContents): PaperSource => {
  const { collection, made, states } = contents;
  const { works, ...survey } = surveyRead(contents);
  // As it is at home, where that is known: the file may leave things out.
  const stateOf = (within: string, things: readonly Current[]) => states?.get(within) ?? stateOfThings(things);
  const passed = works.map((work) => ({
    work: { ...work, state: stateOf(work.record.sculpture.thing, work.within) },
    first: firstPass(work.record, made),
  }));
  const aroundState = stateOf(collection, survey.around);
  const lives = livesFrom(passed.map(({ first }) => first.holds));
  return {
    ...survey,
    collection,
    today: made,
    lives,
    aroundState,
    state: stateOfAll([aroundState, ...passed.map(({ work }) => work.state)]),
    works: passed.map(({ work, first }) => {
      const { need, advice } = secondPass(first, lives, made);
      return { ...work, figures: { need, holds: first.holds, advice } };
    }),
  };
};
