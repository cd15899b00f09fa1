import { type BodyOf, type KindOfThing, nameOf } from '../../src/engine/record';
import { ladderStepOf } from '../../src/engine/trade';
import { type Seeded, seeded } from './seeded';

/** Zones looked at between rounds, in each work. */
const watched = 4;
const looksAYear = [45, 90, 140];
const askedAgain = 3;

export type Put = <K extends KindOfThing>(thing: string, kind: K, body: BodyOf<K>) => string;

/** What is done for a work beside its rounds, drawn by a seed of its own: a wax each year, looks after it, zones asked again. */
export interface Care {
  after(round: string, date: string, seen: readonly Again[]): void;
}

/** A zone with the first coverage found in it. */
export interface Again {
  readonly zone: string;
  readonly kind: string;
  readonly coverage: NonNullable<BodyOf<'finding'>['coverage']>;
}

const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

export const careFor = (sculpture: string, zones: readonly string[], put: Put, seed: number): Care => {
  const draw = seeded(seed);
  const patience = zones.slice(0, watched).map(() => 60 + draw.below(120));
  return {
    after: (round, date, seen) => {
      const waxed = Date.parse(`${date}T09:00:00Z`) + 7 * 86_400_000;
      put(nameOf.treatment(draw.id(waxed)), 'treatment', {
        sculpture,
        zones: [],
        type: 'wax',
        date: dayOf(waxed),
        coats: 2,
      });
      zones.slice(0, watched).forEach((zone, i) => {
        const back = (patience[i] ?? 0) * (0.6 + draw.next() * 0.8);
        for (const days of looksAYear)
          put(nameOf.look(draw.id(waxed)), 'look', lookAt(sculpture, zone, waxed, days, back));
      });
      for (const { zone, kind, coverage } of again(seen, draw)) {
        const step = ladderStepOf(Math.min(1, Math.max(0.001, coverage.value * (0.7 + draw.next() * 0.6))));
        const said = { value: step.value, low: step.low, high: step.high, method: 'ladder' as const };
        const ratings = [{ kind, origin: 'metal' as const, coverage: said, first: coverage }];
        put(nameOf.rerating(round, zone), 'rerating', { sculpture, round, zone, ratings });
      }
    },
  };
};

const lookAt = (sculpture: string, zone: string, waxed: number, days: number, back: number): BodyOf<'look'> => ({
  sculpture,
  zone,
  date: dayOf(waxed + days * 86_400_000),
  result: days < back ? 'clear' : 'green',
  planned: true,
  wet: 'dry',
});

const again = (seen: readonly Again[], draw: Seeded): readonly Again[] =>
  Array.from({ length: Math.min(askedAgain, seen.length) }, () => draw.pick(seen)).filter(
    (one, i, all) => all.findIndex(({ zone }) => zone === one.zone) === i,
  );
