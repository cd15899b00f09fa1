import { findingsOf, type SculptureRecord, visitOf } from '../../engine/record';
import { type KindOfFinding, kindOf, kinds } from '../../engine/trade';

export interface EarlierKind {
  readonly kind: KindOfFinding;
  readonly origin: 'dirt' | 'stain' | 'metal';
}

const rank = new Map(kinds.map(({ id }, at) => [id, at]));

/** Kinds that stood in a zone when it was last answered, in the order of the trade: without their share, for the own eye comes first. */
export const earlierKinds = (record: SculptureRecord, zone: string): readonly EarlierKind[] => {
  const last = [...record.rounds].reverse().find(({ thing }) => {
    const state = visitOf(record, thing, zone)?.body.state;
    return state !== undefined && state !== 'not looked';
  });
  if (!last) return [];
  return findingsOf(record, last.thing, zone)
    .filter(({ body }) => !body.cleared && body.coverage?.value !== 0)
    .flatMap(({ body }) => {
      const kind = kindOf(body.kind);
      return kind ? [{ kind, origin: body.origin }] : [];
    })
    .sort((a, b) => (rank.get(a.kind.id) ?? 0) - (rank.get(b.kind.id) ?? 0));
};
