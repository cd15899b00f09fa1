import { knownEyes } from '../eye';
import { asThing, type CollectionOwn, type Current, type KindOfThing, type KnownEye } from '../record';

/** Everything the collection's own knowledge is made of. */
export interface OwnSources {
  readonly scale: Current | undefined;
  readonly holdRules: Current | undefined;
  /** Of all works. */
  readonly reratings: readonly Current[];
  readonly rounds: readonly Current[];
  readonly eyeChecks: readonly Current[];
}

/** What the collection set for itself and knows of its surveyors' eyes, as the sums of every work read it. */
export const collectionOwn = ({ scale, holdRules, reratings, rounds, eyeChecks }: OwnSources): CollectionOwn => {
  const things = <K extends KindOfThing>(currents: readonly Current[], kind: K) =>
    currents.flatMap((current) => asThing(current, kind) ?? []);
  const surveyorOf = new Map(things(rounds, 'round').map(({ thing, body }) => [thing, body.surveyor]));
  const known = knownEyes(
    things(reratings, 'rerating').map(({ body }) => ({
      surveyor: surveyorOf.get(body.round) ?? '',
      ratings: body.ratings,
    })),
    things(eyeChecks, 'eyeCheck').map(({ body }) => body),
  );
  return {
    scale: asThing(scale, 'scale')?.body ?? null,
    holdRules: asThing(holdRules, 'holdRules')?.body ?? null,
    eyes: Object.fromEntries(
      Object.entries(known).map(([who, { sd, pairs, patches }]): [string, KnownEye] => [who, { sd, pairs, patches }]),
    ),
  };
};
