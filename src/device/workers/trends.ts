import { gather } from '../../engine/record';
import { trendsOf } from '../../engine/trend';
import type { Reader } from '../store';
import type { Step } from './figures';
import { firstStamp, type Kept, rowOf } from './kept';
import { ownIn } from './own';

export interface TrendsAsked {
  readonly do: 'trends';
  readonly collection: string;
  readonly sculpture: string;
  readonly today: string;
}

/** All series of one work: much to work out and to keep, so they come when somebody asks for that work. */
export async function* trendsInSteps(
  source: Omit<Reader, 'close'>,
  { collection, sculpture, today }: TrendsAsked,
): AsyncGenerator<Step, void> {
  const { own, word } = await ownIn(source, collection);
  const { currents, heads } = await source.standing(sculpture);
  const record = gather(currents, own);
  if (!record) return;
  const row: Kept<unknown> = { stamp: firstStamp(heads, word), from: today, until: null, value: trendsOf(record) };
  yield { rows: [[rowOf.trends(sculpture), row]] };
}
