import { agreedInForce, comparable, type ReadingConditions } from '../../engine/colour';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Notice } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.colour.way;

interface FitsNothingProps {
  readonly read: ReadingConditions & { readonly date: string };
  readonly zone: string | undefined;
  readonly agreed: readonly Thing<'agreedColour'>[];
  /** Readings of the same spot. */
  readonly earlier: readonly Thing<'reading'>[];
}

/** Said while the instrument is still here: that, read like this, the figures can be held against nothing. */
export function FitsNothing({ read, zone, agreed, earlier }: FitsNothingProps) {
  const held = agreedInForce(read, agreed, zone);
  const before = earlier.filter(({ body }) => body.date < read.date);
  const nearest = before.at(-1);
  const againstHeld = held ? comparable(held.body, read) : [];
  const againstEarlier =
    nearest && before.every(({ body }) => comparable(body, read).length > 0) ? comparable(nearest.body, read) : [];
  if (againstHeld.length + againstEarlier.length === 0) return null;
  return (
    <Notice kind="caution" title={words.noMatch(againstHeld.length > 0, againstEarlier.length > 0)}>
      <Reasons reasons={[...againstHeld, ...againstEarlier]} />
      <p>{words.askNow}</p>
    </Notice>
  );
}
