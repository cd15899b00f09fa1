import { collectionOwn } from '../../engine/reckoning';
import { type CollectionOwn, nameOf } from '../../engine/record';
import type { Reader } from '../store';
import { wordOf } from '../wordOf';

/** What of the collection's own moves a figure: the spread of an eye does, how many pairs it rests on does not. */
const movingIn = ({ eyes, ...own }: CollectionOwn) => ({
  ...own,
  eyes: Object.fromEntries(Object.entries(eyes).map(([who, { sd }]) => [who, sd])),
});

/** What the collection owns, and the word for what of it moves a figure. */
export const ownIn = async (
  source: Pick<Reader, 'current' | 'ofKind'>,
  collection: string,
): Promise<{ readonly own: CollectionOwn; readonly word: string }> => {
  const [scale, holdRules, reratings, rounds, eyeChecks] = await Promise.all([
    source.current(nameOf.scale(collection)),
    source.current(nameOf.holdRules(collection)),
    source.ofKind('rerating'),
    source.ofKind('round'),
    source.ofKind('eyeCheck'),
  ]);
  const own = collectionOwn({ scale, holdRules, reratings, rounds, eyeChecks });
  return { own, word: wordOf(movingIn(own)) };
};
