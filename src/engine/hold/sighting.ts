import { findingsOf, type SculptureRecord, type Thing, visitOf } from '../record';
import { kindOf, originOf } from '../trade';
import type { HoldEvent } from './hold';

/** Why something that was recorded says nothing of the green. */
export type Silence = 'wet' | 'unsure' | 'carried' | 'no word on green' | 'no coverage';

/** What one look, or one round, says of the green in a zone on a day. */
export interface Sighting {
  readonly day: string;
  readonly word: 'clear' | 'green' | Silence;
  /** Made on a dry surface, and said to be. */
  readonly dry: boolean;
  /** Rounds and planned looks; the rest was noticed in passing. */
  readonly planned: boolean;
  /** On the day of a coating: made after it. A look is taken to come before the work, as one looks and then waxes. */
  readonly afterWork: boolean;
  /** Thing names it rests on. */
  readonly things: readonly string[];
}

type Round = Thing<'round'>;

/** Shares are typed in whole percents and half ones: a sum of them may miss its level by the last bit. */
const rounding = 1e-9;

const fromLook = ({ thing, body }: Thing<'look'>): Sighting => {
  const wet = body.wet === 'wet' || body.wet === 'damp';
  const word = body.result === 'clear' && wet ? 'wet' : body.result;
  return { day: body.date, word, dry: body.wet === 'dry', planned: body.planned, afterWork: false, things: [thing] };
};

/** What the findings of a judged zone say of the green in the metal, before asking how wet it was. */
const wordOfRound = (
  findings: readonly Thing<'finding'>[],
  state: string,
  event: HoldEvent,
  level: number,
): Sighting['word'] => {
  const green = findings.filter(
    ({ body }) => kindOf(body.kind)?.countsAs === 'green' && originOf(body.origin).hazard === 'kind',
  );
  const judged = green.filter(({ body }) => body.carriedFrom === undefined);
  const there = judged.filter(({ body }) => !body.cleared && body.coverage?.value !== 0);
  // Areas of several greens are added, as in the active area; where one is not told, the rest is the least it can be.
  const cover = there.reduce((sum, { body }) => sum + (body.coverage?.value ?? 0), 0);
  if (there.length > 0 && (event === 'spot' || cover >= level - rounding)) return 'green';
  if (green.length > judged.length) return 'carried';
  if (there.some(({ body }) => body.coverage === undefined)) return 'no coverage';
  if (judged.length > 0 || state === 'nothing') return 'clear';
  return 'no word on green';
};

const fromRound = (
  record: SculptureRecord,
  round: Round,
  zone: string,
  event: HoldEvent,
  level: number,
): Sighting | undefined => {
  const visit = visitOf(record, round.thing, zone);
  const findings = findingsOf(record, round.thing, zone);
  if ((!visit && findings.length === 0) || visit?.body.state === 'not looked') return undefined;
  const { date, wet, washed, type } = round.body;
  const state = visit?.body.state ?? 'found';
  const told = state === 'carried' ? 'carried' : wordOfRound(findings, state, event, level);
  return {
    day: date,
    word: told === 'clear' && wet !== 'dry' ? 'wet' : told,
    dry: wet === 'dry',
    planned: true,
    afterWork: washed === 'after wash' || type === 'after treatment',
    things: [round.thing, ...(visit ? [visit.thing] : []), ...findings.map(({ thing }) => thing)],
  };
};

/** Where looks are made the first spot counts, elsewhere cover in rounds: one event for a zone, over its whole history. */
export const eventOf = (record: SculptureRecord, zone: string): HoldEvent =>
  record.looks.some(({ body }) => body.zone === zone) ? 'spot' : 'cover';

/**
 * Everything looks and rounds say of the green in a zone, in order of days, up to today. Where green was the last word, a zone that
 * was visited and in which nothing is said of green proves nothing; where it was never there, or was gone, other findings alone do
 * say that no green was seen.
 */
export const sightingsOf = (
  record: SculptureRecord,
  zone: string,
  { event, level, today }: { readonly event: HoldEvent; readonly level: number; readonly today: string },
): readonly Sighting[] => {
  const all = [
    ...record.looks.filter(({ body }) => body.zone === zone).map(fromLook),
    ...record.rounds.flatMap((round) => fromRound(record, round, zone, event, level) ?? []),
  ]
    .filter(({ day }) => day <= today)
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0) || Number(a.afterWork) - Number(b.afterWork));
  const everGreen = greenDays(record, zone);
  return all.map((seen) => {
    if (seen.word !== 'no word on green') return seen;
    const said = everGreen.filter(({ day }) => day < seen.day).at(-1);
    return said?.green ? seen : { ...seen, word: seen.dry ? ('clear' as const) : ('wet' as const) };
  });
};

/** When anything was said of green at all, whatever its cover: a little green counts here even where the event is told by cover. */
const greenDays = (record: SculptureRecord, zone: string): { readonly day: string; readonly green: boolean }[] =>
  [
    ...record.looks
      .filter(({ body }) => body.zone === zone && body.result !== 'unsure')
      .map(({ body }) => ({ day: body.date, green: body.result === 'green' })),
    ...record.rounds.flatMap((round) => {
      const word = fromRound(record, round, zone, 'spot', 0)?.word;
      return word === 'green' || word === 'clear' ? [{ day: round.body.date, green: word === 'green' }] : [];
    }),
  ].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : Number(a.green) - Number(b.green)));
