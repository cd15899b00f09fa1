import type { HoldReason } from '../../engine/hold';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const silences: Readonly<Record<string, readonly [string, string]>> = {
  wet: ['look on a damp or wet surface', 'looks on a damp or wet surface'],
  unsure: ['unsure look', 'unsure looks'],
  carried: ['answer carried over', 'answers carried over'],
  'no word on green': ['visit without a word on the green there was', 'visits without a word on the green there was'],
  'no coverage': ['finding of green without a coverage', 'findings of green without a coverage'],
};

/** 0 Sunday to 6 Saturday. */
export const weekdays = spoken('reasonsOfHold', 'weekdays', [
  'Sunday',
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
] as const);

/** How holds came about, what they tell, and why a date is given or is not. */
export const reasonsOfHold = spoken('reasonsOfHold', 'reasonsOfHold', {
  'hold: told by looks': () =>
    'Looks are made here, so the first bright green spot over 1 cm2 counts as back, in a round too.',
  'hold: told by cover': (s) =>
    `Nobody makes looks here, so green in the metal from ${s.percent('level')} in a round counts as back.`,

  'hold: no coating recorded': () => 'No coating is recorded for this zone.',
  'hold: nobody looked at all': () => 'Neither a look nor a round says anything of this zone.',
  'hold: date not readable': (s) =>
    `${s.treatment('treatment')}, “${s.text('date')}”: no day can be read from this date, so it is left out. Give a year at least.`,
  'hold: dated after today': (s) =>
    `${s.treatment('treatment')} is dated ${s.day('date')}, after today, and is left out.`,
  'hold: zone ended': (s) => `The zone was split or joined on ${s.day('date')}; its parts start anew.`,

  'hold: start seen clear': (s) => `Seen clear on ${s.day('date')}, within two weeks of the coating.`,
  'hold: start assumed clear': () =>
    'Nobody saw it clear and dry within two weeks of the coating; that it was is assumed.',
  'hold: green stood before': (s) =>
    `Green stood there on ${s.day('date')}, before the coating; nobody recorded that it was gone.`,
  'hold: cleaned before': (s) =>
    `The green was taken off before the coating: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'hold: coating day vague': (s) =>
    `The day of the coating is not known: it lies between ${s.day('first')} and ${s.day('last')}, and the hold is that much wider.`,
  'hold: coatings counted as one': (s) =>
    `${s.times('count', 'coating', 'coatings')} of one day, or in no known order, count as one.`,

  'hold: returned': (s) =>
    s.text('first') === ''
      ? `Green was first seen on ${s.day('last')}; nobody saw it clear before.`
      : `Last seen clear on ${s.day('first')}, green first seen on ${s.day('last')}.`,
  'hold: coated again': (s) =>
    `Coated again on ${s.day('date')} while still clear: the hold counts up to the last clear look.`,
  'hold: broken off': (s) =>
    `The series is broken there: ${s.treatment('treatment')}, ${s.day('date')}. The hold counts up to the last clear look before.`,
  'hold: still clear': (s) => `Still clear when last looked at, on ${s.day('date')}.`,
  'hold: noticed in passing': () => 'Noticed in passing, outside the planned looks.',
  'hold: looks of one day disagree': (s) =>
    `On ${s.day('date')} one saw it clear and another saw green: who saw green is believed.`,
  'hold: seen clear again': (s) =>
    `On ${s.day('date')} it was called clear again, with no coating between. The first green counts.`,
  'hold: proves nothing': (s) => {
    const [one, many] = silences[s.text('why')] ?? [s.text('why'), s.text('why')];
    return `Left out, since it proves nothing: ${s.times('count', one, many)}.`;
  },
  'hold: two versions, not settled': (s) =>
    `It rests on ${s.times('things', 'thing', 'things')} with two versions that nobody has settled yet.`,

  'hold: no clean start': (s) =>
    `No clean start: green was there on ${s.day('date')}, within two weeks of the coating.`,
  'hold: perhaps no clean start': (s) =>
    `Perhaps no clean start: green was there on ${s.day('date')}, and the day of the coating is not known closely enough.`,
  'hold: coated again before a look': (s) => `Coated again on ${s.day('date')} before anybody looked.`,
  'hold: broken off before a look': (s) =>
    `Before anybody looked the series was broken: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'hold: zone ended before a look': (s) => `The zone was split or joined on ${s.day('date')} before anybody looked.`,
  'hold: nobody has looked since': () => 'Nobody has looked since.',
  'hold: coating and break not in order': (s) =>
    `Which came first is not known: the coating, or ${s.treatment('treatment')}, ${s.day('date')}. Give the day of both.`,

  'hold: too few zones': (s) =>
    `${s.times('holds', 'hold', 'holds')}, ${s.times('zones', 'zone', 'zones')}: no curve under ${s.number('least')} zones, since all holds of a zone are one story.`,
  'hold: too few ends': (s) =>
    `Only ${s.times('ends', 'hold was', 'holds were')} seen to end; a shape of its own needs ${s.number('least')}.`,
  'hold: shape borrowed': (s) =>
    `The shape of the curve (${s.number('shape', 2)}) is borrowed from the whole collection: ${s.times('holds', 'hold', 'holds')}, ${s.number('ends')} of them seen to end.`,
  'hold: shape within zones': (s) =>
    `How alike the holds of one zone are (shape ${s.number('shape', 2)}) is borrowed from ${s.times('holds', 'hold', 'holds')} of ${s.times('zones', 'zone', 'zones')} of the collection.`,
  'hold: nothing to borrow': () =>
    'The whole collection gives no shape to borrow either, so there is no curve and no median.',
  'hold: no look in between': (s) =>
    `Of ${s.times('ends', 'hold', 'holds')} that ended none was looked at between the coating and the day green was found, so nothing tells when in between it came back. Looks in between would.`,
  'hold: zones drawn anew': (s) =>
    `The range comes from ${s.number('draws')} draws of the ${s.number('zones')} zones, whole zones at a time, and from how wide the holds are known: the wider of the two.`,
  'hold: no lower end in the draws': () => 'The range has no lower end: too few zones tell it.',
  'hold: no upper end in the draws': () => 'The range has no upper end: too few zones tell it.',
  'hold: earlier spans left out': (s) =>
    `${s.times('holds', 'earlier hold is', 'earlier holds are')} left out: before a treatment or a cause removed that makes the surface another one.`,
  'hold: noticed in passing, so many': (s) =>
    `${s.times('holds', 'hold ends', 'holds end')} with something noticed in passing, which is more often green than clear.`,

  'hold: from its own holds': (s) => `From the last ${s.number('holds')} holds of this zone.`,
  'hold: from its group': (s) =>
    `Too few holds of its own; from ${s.times('holds', 'hold', 'holds')} of ${s.times('zones', 'zone', 'zones')} that lie like it.`,
  'hold: from the last coating': (s) => `Counted from the coating of ${s.day('date')}; nobody has seen it clear since.`,
  'hold: clear at the last look': (s) => `Given that it was still clear on ${s.day('date')}.`,
  'hold: chance': (s) => `By then the chance that the green is back reaches ${s.number('percent')} %.`,
  'hold: capped': (s) => `No coating is left longer than ${s.number('months')} months, whatever its holds say.`,
  'hold: severe exposure': (s) =>
    `Facing up, open to rain or in spray no coating is left longer than ${s.number('months')} months, whatever its holds say.`,
  'hold: level reached in between': (s) =>
    `The chance that the green is back reaches ${s.number('percent')} % at some time between ${s.day('first')} and ${s.day('last')}. Only looks in between can tell when.`,
  'hold: does not hold here': (s) =>
    `The chance that the green is back grows too large before ${s.number('months')} months are over. Waxing does not hold here: ask the conservator.`,
  'hold: green right after the coating': (s) =>
    `Green was there on ${s.day('date')}, right after the coating, so waxing keeps nothing away here: ask the conservator.`,
  'hold: green is back': (s) => `The green is back: seen on ${s.day('date')}.`,
  'hold: too few holds, no group': (s) =>
    `${s.times('holds', 'hold of its own is', 'holds of its own are')} too few, and too few zones lie like it.`,
  'hold: none came back': (s) =>
    `In none of its last ${s.number('holds')} holds the green was seen to come back: no need for a date shows.`,
  'hold: no coating on now': () => 'No coating is known to be on it now.',

  'hold: tells most': (s) =>
    `A look then tells most: the chance that it finds the green is about ${s.number('percent')} %.`,
  'hold: sooner is better': () => 'By now it is more likely back than not, so the sooner the better.',
  'hold: walk day': (s) =>
    `Moved to the nearest ${weekdays[Number(s.text('weekday'))] ?? s.text('weekday')}, the day most looks here were made on.`,
  'hold: no walk day yet': (s) =>
    `Moved to the nearest ${weekdays[Number(s.text('weekday'))] ?? s.text('weekday')}, the weekday of the coating, until there are looks.`,
  'hold: look after the next coating': () => 'The next look that tells anything comes after the next coating.',
  'hold: look from the whole collection': (s) =>
    `The look is placed by ${s.times('holds', 'hold', 'holds')} of ${s.times('zones', 'zone', 'zones')} of the whole collection.`,
  'hold: never came back, yearly round will do': (s) =>
    `It was seen clear up to ${s.number('months', 1)} months and never seen to come back: the yearly round will do.`,
  'hold: clear past all that was seen': (s) =>
    `It has stayed clear for ${s.number('months', 1)} months, longer than any hold seen to end: the yearly round will do.`,
} satisfies Sentences<HoldReason>);
