import { spoken } from '../tongue';

/** The text of a panel for visitors, 60 to 120 words. */
export const paperVisitors = spoken('paperVisitors', 'paperVisitors', {
  title: 'Visitor panel',
  reader: 'everybody who passes by',
  head: (title: string, date: string, maker: string) => [title, date, maker].filter(Boolean).join(', '),
  outdoors:
    'Bronze outdoors never quite rests. Rain and air work on its surface; where water runs or stays it slowly turns green.',
  green: 'Green is not dirt: it shows where the surface is changing.',
  looked: (month: string) => `We look it over closely once a year or so, last in ${month}.`,
  waxed: (month: string) => `It is washed and thinly waxed, last in ${month}. Wax keeps the water off for a while.`,
  please:
    'Please do not climb on it, scratch it or rub it bright. If something is loose, broken or painted over, tell us.',
  tell: (contact: string) => `${contact}`,
  count: (n: string) => `${n} words on the panel. Between 60 and 120 are read by people who stand.`,
  about: 'One or two sentences on the work',
  aboutHint: 'What a visitor would like to know: who, when, of what. They stand before the words on bronze.',
  contact: 'Whom to tell',
  contactHint: 'A telephone number or an office, not a name.',
  whole: 'The whole text in your own words',
  wholeHint: 'Takes the place of all that is drafted here.',
  lacks: {
    short: (n: string) => `The panel has ${n} words; fewer than 60 leave a question open.`,
    long: (n: string) => `The panel has ${n} words; more than 120 are not read by people who stand.`,
    contact: 'It is not said whom to tell when something is broken.',
    waxed: 'No waxing is recorded of this work, so the panel says nothing of wax.',
  },
});
