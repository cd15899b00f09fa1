import { spoken } from '../tongue';

/** Help on what is printed and handed over. */
export const helpPapers = spoken('helpPapers', 'helpPapers', {
  papers: {
    title: 'Papers',
    what: 'Everything that can be printed or handed over: for the board, an insurer, bidders, a conservator, your successor.',
    first: 'Choose who will read it, then the work. Look at the page before you print.',
    from: 'Each paper is made from the record at the moment you open it. What was not looked at stands first.',
  },
  paper: {
    title: 'One paper',
    what: 'The paper as it will be printed. It can be printed here or saved as one file that opens without this app.',
    first: 'Read what it says it lacks. Add your own words where there is room for them, then print.',
    from: 'The foot of each page names the day, the author, draft or final, and a mark of the survey it was made from.',
  },
  'papers-kept': {
    title: 'Where things are kept',
    what: 'Keys, colour panels, samples, negatives, copies of the archive: what no tablet holds and somebody will look for one day.',
    first: 'Write down what nobody else could find. Then, once a year, go and see whether it is still there.',
    from: 'You write it, with the day somebody last saw it there. It comes into the letter to your successor.',
  },
  'sculpture-conservator-page': {
    title: 'The conservator’s page',
    what: 'What you ask a conservator, with room for answers: printed and filled in by hand, or typed here from her page.',
    first: 'Write your question and print the page for the visit. Type in afterwards what she wrote, under her name.',
    from: 'Her answers are thoughts with a name and a day. Nothing that was seen is changed by them.',
  },
});
