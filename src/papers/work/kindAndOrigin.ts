import type { BodyOf } from '../../engine/record';
import { type Group, kindOf } from '../../engine/trade';
import { w } from '../../words';

/** What lies on the metal, is let into it or stands under it: "in the metal" would say of these what nobody saw. */
const notOfTheMetal: readonly Group[] = ['coating', 'insert', 'base', 'life'];

/** Where a finding comes from, in a few words, or ''. */
export const originSaid = ({ kind, origin }: Pick<BodyOf<'finding'>, 'kind' | 'origin'>): string => {
  const group = kindOf(kind)?.group;
  return origin === 'metal' && group && notOfTheMetal.includes(group) ? '' : w.paperCondition.origins[origin];
};

/** "Green spots, in the metal", "Wax patchy or worn". */
export const kindAndOrigin = (body: Pick<BodyOf<'finding'>, 'kind' | 'origin'>): string =>
  [kindOf(body.kind)?.name ?? body.kind, originSaid(body)].filter(Boolean).join(', ');
