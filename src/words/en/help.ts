import { spoken } from '../tongue';

/** Words around the help pages. */
export const help = spoken('help', 'help', {
  title: 'Help',
  lead: 'One page for each screen. The question mark at the top leads to the page of the screen you are on.',
  all: 'All help pages',
  back: 'Back to the screen',
  first: 'What to do first',
  words: 'What the words mean',
  from: 'Where it comes from',
  toMethod: 'How everything is worked out',
  lost: 'There is no such help page',
  lostWhat: 'The address may be old. All pages are listed under Help.',
  groups: {
    works: 'Works and this device',
    round: 'Outdoors, and what changed',
    photos: 'Photos',
    carry: 'In and out',
    plan: 'The year and its care',
    money: 'Decisions and money',
    campaign: 'Treatment by others',
    papers: 'Papers',
  },
});
