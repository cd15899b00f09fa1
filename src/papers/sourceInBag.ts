import type { BagContents } from '../device/bag';
import { wordOf } from '../device/wordOf';
import { firstPass, lives as livesFrom, type PaperSource, secondPass } from '../engine/reckoning';
import { surveyRead } from './surveyRead';

/** What papers read, from the entries that go into a bag: the figures are worked out anew. */
export const sourceInBag = (contents: BagContents): PaperSource => {
  const { collection, made, states } = contents;
  const { works, ...survey } = surveyRead(contents);
  const passed = works.map((work) => ({ work, first: firstPass(work.record, made) }));
  const lives = livesFrom(passed.map(({ first }) => first.holds));
  return {
    ...survey,
    collection,
    today: made,
    lives,
    state: states ? wordOf([...states.values()].sort()) : '',
    works: passed.map(({ work, first }) => {
      const { need, advice } = secondPass(first, lives, made);
      const state = states?.get(work.record.sculpture.thing) ?? '';
      return { ...work, state, figures: { need, holds: first.holds, advice } };
    }),
  };
};
