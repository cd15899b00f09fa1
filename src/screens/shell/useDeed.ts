import { useState } from 'react';
import type { Outcome } from '../../actions';
import { sayReason } from '../../words';

/**
 * Runs a deed from a form: what it refused as a sentence, and whether it is under way. Handed what the form holds while it is typed, it
 * forgets that once the deed is done.
 */
export function useDeed(typed?: { readonly kept: () => void }) {
  const [refused, setRefused] = useState<string>();
  const [busy, setBusy] = useState(false);
  const run = async <T extends object>(deed: () => Promise<Outcome<T>>, done?: (got: T) => void): Promise<void> => {
    setBusy(true);
    const outcome = await deed();
    setBusy(false);
    if (outcome.ok) {
      setRefused(undefined);
      typed?.kept();
      done?.(outcome);
    } else setRefused(sayReason(outcome.reason));
  };
  return { run, refused, busy } as const;
}
