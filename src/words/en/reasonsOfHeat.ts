import type { HeatReason } from '../../engine/heat';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const minutes = ['minute', 'minutes'] as const;
const figures: Readonly<Record<string, string>> = {
  thickness: 'the thickness of the metal',
  area: 'the surface that is heated',
  rise: 'how much hotter it shall get',
  power: 'the power of the flame',
  time: 'the time',
  distance: 'the distance',
};

/** Heat near inserts, and the day of hot work: what is open, and what stands against closing it. */
export const reasonsOfHeat = spoken('reasonsOfHeat', 'reasonsOfHeat', {
  'heat: share of the flame': (s) =>
    `Between ${s.percent('low')} and ${s.percent('high')} of an open flame’s heat goes into the metal: our own assumption.`,
  'heat: more through air': () => 'No heat is taken to be lost on the way; wind and thick joints make it longer.',
  'heat: a sixth arrives': () =>
    'There about a sixth of the rise at the heated place has arrived: that much, not none. It speaks of thick metal heated on one side.',
  'heat: carries on along metal': () =>
    'Heat goes on from there for as long as the metal is hot, also after the flame is out, and hot gas goes further than metal carries it.',
  'heat: practice limit leads': (s) =>
    `Glass makers allow ${s.measure('limit', 'difference')} between two of its sides, of whole flat glass. Less if its conservator says less.`,
  'heat: strength says more': (s) =>
    `From strength and stretch of such glass, theory gives ${s.number('low')} to ${s.measure('high', 'difference')}; a weathered edge only about ${s.measure('weathered', 'difference')}. The limit of practice counts, not theory.`,
  'heat: glass not known': (s) =>
    `Glass that is ${s.text('kind').toLowerCase()}: nobody can say from here what heat it bears. Take it out before the heat. If it cannot come out, a conservator of glass says the limit and the way.`,
  'heat: figure not possible': (s) => `Give ${figures[s.text('what')] ?? s.text('what')} as a number above nought.`,

  'heat: no reading': () => 'No reading was taken: what heat this insert had nobody knows.',
  'heat: over the limit': (s) =>
    `At ${s.text('time')} it was ${s.measure('celsius', 'temperature', 1)}, at or over its limit of ${s.measure('limit', 'temperature', 1)}. Take the heat away and call whoever set the limit.`,
  'heat: near the limit': (s) =>
    `At ${s.text('time')} it was ${s.measure('celsius', 'temperature', 1)}, near its limit of ${s.measure('limit', 'temperature', 1)}. Take the heat away now.`,
  'heat: sides apart': (s) =>
    `At ${s.text('time')} two of its sides were ${s.measure('kelvin', 'difference', 1)} apart, at or over the limit of ${s.measure('limit', 'difference', 1)}. Take the heat away, do not cool it.`,
  'heat: sides near apart': (s) =>
    `At ${s.text('time')} two of its sides were ${s.measure('kelvin', 'difference', 1)} apart, near the limit of ${s.measure('limit', 'difference', 1)}. Take the heat away now.`,
  'heat: rises fast': (s) =>
    `At ${s.text('time')} it rose by ${s.measure('perMinute', 'difference', 1)} a minute; the limit is ${s.measure('limit', 'difference', 1)}.`,
  'heat: gap in the log': (s) =>
    `Nothing is known of “${s.text('spot')}” from ${s.text('since')} to ${s.text('until')}, ${s.times('minutes', ...minutes)}. ${s.text('could') === '' ? 'How hot it came nobody can say: no rise was read.' : `At the fastest rise of the day it could have come to ${s.measure('could', 'temperature')}.`}`,
  'heat: one side only': () =>
    'Only one side was measured: how far its sides were apart is not known, though a limit is set for it.',
  'heat: two values at once': (s) =>
    `Two different values for “${s.text('spot')}” at ${s.text('time')}: one of them is wrong. Both stand.`,
  'heat: no limit set': () => 'No limit is set for this insert, so no reading can be called low.',
  'heat: limit by nobody': () => 'A limit needs the name or role of the expert who set it, and the day.',

  'heat: clock went back': (s) =>
    `The clock of this tablet was put back by about ${s.times('minutes', ...minutes)} since the work ended.`,
  'heat: not counted': (s) =>
    `For ${s.times('minutes', ...minutes)} of the clock the tablet slept, the app was shut or the clock was changed: that time is not counted.`,

  'heat: no permit': () => 'No permit is named. Hot work waits for it.',
  'heat: nobody authorised': () => 'Nobody is named who authorised the work.',
  'heat: no watcher': () => 'No fire watcher is named.',
  'heat: clear zone short': (s) =>
    `The clear zone is ${s.measure('metres', 'length', 1)}; published rules ask for ${s.measure('rule', 'length', 1)}, or shields. Ask the fire authority.`,
  'heat: watch short': (s) =>
    `A watch of ${s.times('minutes', ...minutes)} is shorter than the ${s.number('rule')} that published rules ask for at least. Ask the fire authority and the insurer.`,
  'heat: checks open': (s) => `${s.times('count', 'check is', 'checks are')} still open.`,
  'heat: insert not on the list': (s) =>
    `${s.thing('insert')} is on the work and not on this day’s list. Put it on, or take it out of the work.`,
  'heat: insert without limit': (s) =>
    `${s.thing('insert')} has no limit set by a named expert. Take it out, or have its limit said.`,
  'heat: insert without a way': (s) =>
    `Nobody has said how ${s.thing('insert')} is kept from heat: taken out, shielded, kept away from, or put off.`,

  'heat: work not ended': () => 'The work is not said to be over: the watch counts from then.',
  'heat: watch has no length': () =>
    'No length of the fire watch is given. The fire authority and the insurer say how long it is.',
  'heat: watch running': (s) =>
    `The fire watch is not over: ${s.times('minutes', ...minutes)} of it are still to be counted. If the tablet lost count, give the times of the watcher’s own watch.`,
  'heat: watch not said kept': (s) =>
    `The watcher has not given their word that the watch of ${s.times('minutes', ...minutes)} was kept to its end.`,
  'heat: watch too short': (s) =>
    `The watch was kept for ${s.times('kept', ...minutes)}; ${s.number('asked')} are asked for.`,
  'heat: no photo after': (s) => `${s.thing('insert')} has no photo after the heat.`,

  'heat: day is closed': () => 'This day is closed. Open it again before anything of it is changed.',
  'heat: days not in order': () => 'The days or times are not in order: the end lies before the beginning.',
  'heat: not of this day': () =>
    'The end of the work is not of the day of this card. Make a card for each day, or change the day of this one.',
  'heat: a watch of no time': () => 'The two times of the watcher’s own watch are the same.',
  'heat: own watch turned round': (s) =>
    `From ${s.text('since')} to ${s.text('until')} is more than half a day: the two times stand in the wrong order.`,
  'heat: own watch before the end': (s) =>
    `The watch begins at ${s.text('since')}, before the flame was out at ${s.text('ended')}. It counts from then. If the clock of this tablet was wrong, say the work is over anew.`,
  'heat: no solution': () => 'Say what was laid on: the solution, as its maker said it.',
  'heat: signed by nobody': () => 'Say who: a name or a role.',
  'heat: limit under the air': () =>
    'A limit below what the air has outdoors is a slip: check the figure and its unit.',
} satisfies Sentences<HeatReason>);
