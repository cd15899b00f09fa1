import type { ZoneHolds } from '../hold';
import { dayRange, type Thing } from '../record';

/** Somebody who answers for a treatment, and what came back while they do. */
export interface Recall {
  readonly campaign: string;
  readonly sculpture: string;
  readonly title: string;
  readonly who: string | null;
  readonly until: string;
  readonly terms: string | null;
  /** Zones on which green was seen since the treatment ended, with the day it was first seen. */
  readonly zones: readonly { readonly zone: string; readonly firstSeen: string }[];
}

/** Whom to call back under a warranty that still runs, and why: zones where green was seen again since the treatment. */
export const recallList = (
  campaigns: readonly Thing<'campaign'>[],
  holdsOf: (sculpture: string) => readonly ZoneHolds[],
  today: string,
): readonly Recall[] =>
  campaigns
    .flatMap(({ thing, body }): Recall[] => {
      const { sculpture, title, warrantyUntil: until, warrantyWho, warrantyTerms, accepted } = body;
      const ended = body.ended ?? accepted;
      if (!until || until < today || !ended) return [];
      const zones = holdsOf(sculpture).flatMap(({ zone, holds }) => {
        // Waxed again since: what comes back then is not told of the treatment alone, but the contractor is to see it.
        const seen = holds
          .filter(
            ({ start, firstSeen }) =>
              firstSeen !== null && firstSeen > ended && dayRange(start).from >= (body.began ?? body.opened),
          )
          .map(({ firstSeen }) => firstSeen as string)
          .sort();
        return seen[0] ? [{ zone, firstSeen: seen[0] }] : [];
      });
      return [
        { campaign: thing, sculpture, title, who: warrantyWho ?? null, until, terms: warrantyTerms ?? null, zones },
      ];
    })
    .sort((a, b) => (a.until < b.until ? -1 : 1));
