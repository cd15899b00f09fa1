import { coverageConflicts } from '../../engine/condition';
import {
  type Asking,
  asking,
  type DraftFinding,
  isJudged,
  type Reason,
  standing,
  type Thing,
  type ZoneDraft,
} from '../../engine/record';
import { type Caution, type KindOfFinding, kindOf } from '../../engine/trade';
import type { Desk, Question } from '../desk';
import { type AskedAgain, askedAgain } from './askAgain';
import { whyNotLeave } from './leaveZone';
import { memoryOf, type RoundMemory } from './roundMemory';
import { type Undoable, undoable } from './undoInRound';
import { answeredOnWalk, nextOnWalk, walkOf, type ZoneOnWalk } from './walk';
import { zoneCautions } from './zoneCautions';

/** How many kinds the row "often here" offers. */
const oftenShown = 4;

/** A round as its list of zones shows it. */
export interface RoundView {
  readonly sculpture: Thing<'sculpture'>;
  readonly round: Thing<'round'>;
  readonly walk: readonly ZoneOnWalk[];
  readonly answered: number;
  /** The zone with the last touch, else the next one without an answer; none when all have one. */
  readonly goOnWith: string | undefined;
  readonly again: AskedAgain | undefined;
  readonly undo: Undoable | undefined;
  readonly personChecks: readonly Thing<'personCheck'>[];
}

/** One zone's pad. */
export interface ZoneView {
  readonly round: Thing<'round'>;
  readonly sculpture: Thing<'sculpture'>;
  readonly zone: Thing<'zone'>;
  /** 1 is the first zone of the walk. */
  readonly position: number;
  readonly zones: number;
  readonly answered: number;
  /** The zone to go on with; none when every other one has its answer. */
  readonly next: Thing<'zone'> | undefined;
  /** The other zones of the walk: a stain may come from one of them. */
  readonly otherZones: readonly Thing<'zone'>[];
  readonly draft: ZoneDraft;
  readonly asks: Asking;
  /** Kinds recorded most on this work, and not yet in this zone. */
  readonly often: readonly KindOfFinding[];
  /** Stop words among the findings that stand. */
  readonly stops: readonly DraftFinding[];
  readonly personChecks: readonly DraftFinding[];
  /** Kinds that exclude each other and pass the whole zone. */
  readonly conflicts: readonly Reason[];
  readonly cautions: readonly Caution[];
  readonly elevations: readonly Thing<'elevation'>[];
  readonly undo: Undoable | undefined;
  /** Why the pad cannot be left this way; undefined where it can. */
  readonly notAsLastYear: Reason | undefined;
  readonly notNext: Reason | undefined;
}

const kept = new WeakMap<RoundMemory, Map<string, Question<unknown>>>();

/** A view of the memory, one per name: null where the round is not here; the same reference until something changed. */
const viewOf = <T>(memory: RoundMemory, name: string, look: () => T | null): Question<T | null> => {
  const views = kept.get(memory) ?? new Map<string, Question<unknown>>();
  kept.set(memory, views);
  const already = views.get(name);
  if (already) return already as Question<T | null>;
  const made = lookOnce(memory, look);
  views.set(name, made);
  return made;
};

const lookOnce = <T>(memory: RoundMemory, look: () => T | null): Question<T | null> => {
  let seen: { readonly version: number; readonly view: T | null | undefined } | undefined;
  return {
    subscribe: memory.subscribe,
    get: () => {
      const fault = memory.fault();
      if (fault !== undefined) throw fault;
      const version = memory.version();
      if (seen?.version !== version) {
        const atHand = memory.get();
        seen = { version, view: atHand ? look() : atHand };
      }
      return seen.view;
    },
    answered: () => (memory.get() ?? memory.fault()) !== undefined,
  };
};

export const roundView = (desk: Desk, round: string): Question<RoundView | null> => {
  const memory = memoryOf(desk, round);
  return viewOf(memory, 'round', () => {
    const atHand = memory.get();
    if (!atHand) return null;
    const walk = walkOf(atHand.record, atHand.round, (zone) => memory.openTouches(zone).length > 0);
    const touched = memory.allOpenTouches().at(-1)?.zone;
    const lastLeft = lastAnswered(walk, atHand.record.visits, round);
    return {
      sculpture: atHand.record.sculpture,
      round: atHand.round,
      walk,
      answered: answeredOnWalk(walk),
      goOnWith: walk.find(({ zone }) => zone.thing === touched)?.zone.thing ?? nextOnWalk(walk, lastLeft),
      again: askedAgain(memory),
      undo: undoable(memory),
      personChecks: atHand.record.personChecks.filter((check) => !check.body.closed),
    };
  });
};

/** The zone whose answer was written last on this round: from there the walk goes on. */
const lastAnswered = (
  walk: readonly ZoneOnWalk[],
  visits: readonly Thing<'visit'>[],
  round: string,
): string | undefined => {
  const here = visits.filter((v) => v.body.round === round).sort((a, b) => (a.lead.id < b.lead.id ? -1 : 1));
  const last = here.at(-1)?.body.zone;
  return walk.some(({ zone }) => zone.thing === last) ? last : undefined;
};

const stands = (f: DraftFinding): boolean => isJudged(f) && !f.gone && f.origin !== undefined;

const isStop = (f: DraftFinding): boolean => {
  const stop = kindOf(f.kind)?.stop;
  return stop === 'always' || (stop === 'first time' && !f.earlier);
};

const oftenHere = (memory: RoundMemory, draft: ZoneDraft): readonly KindOfFinding[] => {
  const times = new Map<string, number>();
  for (const f of memory.get()?.record.findings ?? []) {
    if (!f.body.carriedFrom && !f.body.cleared) times.set(f.body.kind, (times.get(f.body.kind) ?? 0) + 1);
  }
  const already = new Set(draft.findings.map((f) => f.kind));
  return [...times]
    .filter(([kind]) => !already.has(kind))
    .sort((a, b) => b[1] - a[1] || a[0].localeCompare(b[0]))
    .flatMap(([kind]) => kindOf(kind) ?? [])
    .slice(0, oftenShown);
};

export const zoneView = (desk: Desk, round: string, zone: string): Question<ZoneView | null> => {
  const memory = memoryOf(desk, round);
  return viewOf(memory, zone, () => {
    const atHand = memory.get();
    const draft = memory.draftOf(zone);
    if (!atHand || !draft) return null;
    const walk = walkOf(atHand.record, atHand.round, (z) => memory.openTouches(z).length > 0);
    const at = walk.findIndex((z) => z.zone.thing === zone);
    const here = walk[at];
    if (!here) return null;
    const onward = nextOnWalk(walk, zone);
    return {
      round: atHand.round,
      sculpture: atHand.record.sculpture,
      zone: here.zone,
      position: at + 1,
      zones: walk.length,
      answered: answeredOnWalk(walk),
      next: walk.find((z) => z.zone.thing === onward)?.zone,
      otherZones: walk.flatMap((z) => (z.zone.thing === zone ? [] : [z.zone])),
      draft,
      asks: asking(draft),
      often: oftenHere(memory, draft),
      stops: draft.findings.filter((f) => stands(f) && isStop(f)),
      personChecks: draft.findings.filter((f) => stands(f) && kindOf(f.kind)?.personCheck),
      conflicts: coverageConflicts(standing(draft)),
      cautions: zoneCautions(
        walk.map((z) => z.zone),
        zone,
      ),
      elevations: atHand.elevations,
      undo: undoable(memory),
      notAsLastYear: whyNotLeave(draft, { how: 'as last year' }),
      notNext: whyNotLeave(draft, { how: 'next' }),
    };
  });
};
