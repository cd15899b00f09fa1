import { spoken } from '../tongue';

/** The tour of the demo: what to look at, one line for each place. */
export const tour = spoken('tour', 'tour', {
  label: 'Tour of the garden',
  at: (step: string, all: string) => `${step} of ${all}`,
  goThere: 'Show me',
  next: 'Next',
  back: 'Back',
  leave: 'Leave the tour',
  end: 'Done',
  left: 'The tour is over. It waits on the first screen and in the help.',
  begin: 'Take the tour of five minutes',
  goOn: 'Go on with the tour',
  steps: {
    works: 'Six bronzes, six years. Most need first: the Stair stands on top, the Geese need nothing.',
    blink:
      'The Stair from one station, this year laid on last. Touch “Blink”: what moves is green. “All years in a row” has six.',
    sure: 'Did the Stair get worse? One finding did; fifteen did not change for sure. Touch “Since the first round”.',
    holds: 'How long each wax kept the green away. The bars look shorter from year to year, and that is not proven.',
    water: 'Where the green comes from: arrows show how water runs from the hat over shoulder and coat.',
    broken: 'Supper by Five Lenses was stripped in 2023. Its line breaks there: before and after are not one story.',
    heat: 'Two lenses could not be taken out before the heat: a limit, a shield and the readings of the day.',
    colour: 'The colour that was agreed, signed by those who may, and what an instrument says of it now.',
    due: 'What asks for a date: a look before the warranty ends, and a reason to decide anew.',
    geese:
      'The Geese: no trend in six rounds, nothing to do. The open dot is a year in which nobody could reach one zone.',
    eyes: 'Rope and Patience: in 2024 another person looked. The mark says that part of the step may be the eye’s.',
    cause: 'Sleeping Fluke: the sprinkler was moved in July 2023. Since then the scale fades, with no treatment.',
    board: 'For the board: the case for the Stair, square metres first, what speaks against it beside it.',
    bidders: 'For bidders: nine lines, the same for all, with the amounts to price them by.',
    successor: 'For whoever comes after you: a letter drafted from open worries and decisions not to act.',
    bag: 'Carry it out: a bag holds survey, photos and papers, and is checked before it leaves. That is all.',
  },
});
