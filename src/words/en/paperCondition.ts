import { spoken } from '../tongue';

/** The condition report of one work. */
export const paperCondition = spoken('paperCondition', 'paperCondition', {
  title: 'Condition report',
  reader: 'conservator, file, lender, insurer',
  what: 'The work',
  maker: 'Maker',
});
