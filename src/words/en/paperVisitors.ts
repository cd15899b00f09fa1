import { spoken } from '../tongue';

/** The text of a panel for visitors, 60 to 120 words. */
export const paperVisitors = spoken('paperVisitors', 'paperVisitors', {
  title: 'Visitor panel',
  reader: 'everybody who passes by',
  head: (title: string, date: string, maker: string) => [title, date, maker].filter(Boolean).join(', '),
  outdoors:
    'Bronze that stands outdoors never quite rests. Rain and air work on its surface, and where water runs or stays it slowly turns green.',
  green: 'Green is not dirt. It shows where the surface is changing, and we watch how far it goes.',
  looked: (month: string) => `Once a year or so we look at every part of it closely, most recently in ${month}.`,
  waxed: (month: string) =>
    `It is washed and given a thin coat of wax, last in ${month}. The wax keeps the water off for a while; then it is renewed.`,
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
