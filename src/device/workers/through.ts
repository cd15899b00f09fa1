import type { LookedThrough, Reader } from '../store';
import type { Step } from './figures';

export interface ThroughAsked {
  readonly do: 'look through';
}

/** The row that says what looking through everything came to. */
export const lookedKey = 'looked through';

/** Looks through everything beside the page. */
export async function* throughInSteps(source: Omit<Reader, 'close'>): AsyncGenerator<Step, void> {
  for await (const step of source.lookThrough())
    yield 'looked' in step ? { rows: [[lookedKey, step.looked satisfies LookedThrough]] } : step;
}
