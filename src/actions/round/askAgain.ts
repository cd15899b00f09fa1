import { type Coverage, nameOf, type Thing } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { canBeAskedAgain, drawAgain } from './drawAgain';
import { roundDeed, roundRefusal } from './reasonCodes';
import { type AtHand, memoryOf, type RoundMemory } from './roundMemory';
import { touchZone } from './touchZone';
import { answeredOnWalk, walkOf } from './walk';

type Finding = Thing<'finding'>;

/** The one question asked again now, without the answer given before. */
export interface AskedAgain {
  readonly zone: Thing<'zone'>;
  readonly kind: string;
  readonly origin: Finding['body']['origin'];
  /** Questions answered and to be answered, over all zones drawn. */
  readonly done: number;
  readonly all: number;
}

/** How a coverage judged again stands in the log of touches, under the name of its re-rating. */
export interface AgainTouch {
  readonly do: 'again';
  readonly key: string;
  readonly coverage: Coverage;
}

const key = (f: Finding): string => `${f.body.kind}/${f.body.origin}`;

/** Coverages of a zone judged in this round: what is asked again. */
const judgedIn = ({ record, round }: AtHand, zone: string): readonly Finding[] =>
  record.findings.filter(
    ({ body }) =>
      body.round === round.thing && body.zone === zone && body.coverage && !body.carriedFrom && !body.cleared,
  );

/** Zones drawn for this round: as recorded, or, until the first is asked, as the round's own name draws them. */
const drawn = (atHand: AtHand): readonly string[] => {
  const { record, round } = atHand;
  // What is entered from paper is not before anybody's eyes any more.
  if (round.body.fromPaper) return [];
  if (round.body.askAgain) return round.body.askAgain;
  const zones = walkOf(record, round, () => false);
  const walked = zones.filter((z) => z.standing !== 'not yet').at(-1)?.zone.thing;
  return drawAgain(
    round.thing,
    canBeAskedAgain(
      record,
      round.thing,
      zones.map((z) => z.zone),
      walked,
    ),
  );
};

const saidAgain = (memory: RoundMemory, name: string): ReadonlyMap<string, Coverage> =>
  new Map(
    memory.openTouches(name).flatMap((row): [string, Coverage][] => {
      const said = row.touch as AgainTouch;
      return [[said.key, said.coverage]];
    }),
  );

/** What is to be asked again at the end of the round; undefined when nothing is, or every zone has not been answered yet. */
export const askedAgain = (memory: RoundMemory): AskedAgain | undefined => {
  const atHand = memory.get();
  if (!atHand || atHand.round.body.ended) return undefined;
  const walk = walkOf(atHand.record, atHand.round, () => false);
  if (answeredOnWalk(walk) < walk.length) return undefined;
  let done = 0;
  let all = 0;
  let at: { zone: Thing<'zone'>; finding: Finding } | undefined;
  for (const name of drawn(atHand)) {
    const zone = walk.find((z) => z.zone.thing === name)?.zone;
    if (!zone) continue;
    const rerating = nameOf.rerating(atHand.round.thing, name);
    const judged = judgedIn(atHand, name);
    all += judged.length;
    if (atHand.record.reratings.some((r) => r.thing === rerating)) {
      done += judged.length;
      continue;
    }
    const said = saidAgain(memory, rerating);
    done += judged.filter((f) => said.has(key(f))).length;
    const finding = judged.find((f) => !said.has(key(f)));
    if (finding) at ??= { zone, finding };
  }
  return at && { zone: at.zone, kind: at.finding.body.kind, origin: at.finding.body.origin, done, all };
};

/** One coverage judged again. The last one of a zone writes its re-rating beside the first judgement, which stays as it is. */
export const rateAgain = (desk: Desk, round: string, coverage: Coverage): Promise<Outcome> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    await memory.ready();
    const atHand = memory.get() ?? refuse(roundRefusal('round: not here', {}));
    const asked = askedAgain(memory) ?? refuse(roundRefusal('round: not to be rated again', {}));
    const name = nameOf.rerating(round, asked.zone.thing);
    const said: AgainTouch = { do: 'again', key: `${asked.kind}/${asked.origin}`, coverage };
    const ratings = new Map([...saidAgain(memory, name), [said.key, coverage]]);
    const judged = judgedIn(atHand, asked.zone.thing);
    // The last one is no touch of its own: its entry says it, and undo opens the zone again without it.
    if (judged.some((f) => !ratings.has(key(f)))) return must(await touchZone(desk, round, name, said));
    const body: Thing<'rerating'>['body'] = {
      sculpture: atHand.record.sculpture.thing,
      round,
      zone: asked.zone.thing,
      ratings: judged.map((f) => ({
        kind: f.body.kind,
        origin: f.body.origin,
        coverage: ratings.get(key(f)) as Coverage,
        first: f.body.coverage as Coverage,
      })),
    };
    const settles = memory.openTouches(name).map((row) => row.n);
    const deed = roundDeed('deed: zone asked again', { letter: asked.zone.body.letter, round, zone: asked.zone.thing });
    const within = body.sculpture;
    return must(
      await memory.during(
        () =>
          commitChanges(
            desk,
            deed,
            [
              { thing: name, kind: 'rerating', within, body },
              { thing: round, patch: { askAgain: [...drawn(atHand)] } },
            ],
            { settlesTouches: settles },
          ),
        [name, round],
        settles,
      ),
    );
  });

/** No zone is asked again, or no further one. */
export const skipAskingAgain = (desk: Desk, round: string): Promise<Outcome> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    const atHand = (await memory.ready()) ?? refuse(roundRefusal('round: not here', {}));
    const asked = atHand.record.reratings.filter((r) => r.body.round === round).map((r) => r.body.zone);
    const change = { thing: round, patch: { askAgain: asked } };
    const deed = roundDeed('deed: asking again skipped', { round });
    return must(await memory.during(() => commitChanges(desk, deed, [change]), [round]));
  });
