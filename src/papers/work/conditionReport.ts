import { w } from '../../words';
import { facts, type PaperSort, section } from '../layout';
import { worksToChoose } from '../reading';

const words = w.paperCondition;

/** The condition report of one work, after the contents of EN 16095. */
export const conditionReport: PaperSort = {
  id: 'condition-report',
  about: 'work',
  pages: [3, 6],
  title: words.title,
  reader: words.reader,
  choices: worksToChoose,
  make: ({ works }, about) => {
    const work = works.find(({ record }) => record.sculpture.thing === about);
    if (!work) return undefined;
    const { number, title, maker } = work.record.sculpture.body;
    return {
      title: words.title,
      over: `${number} ${title}`,
      number,
      state: work.state,
      own: [],
      lacks: [],
      body: [section(words.what, facts([[words.maker, maker]]))],
    };
  },
};
