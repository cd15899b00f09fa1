import type { Desk } from '../desk';
import { awakeReady, batteryReady, cameraReady, installedReady, offlineReady } from './ofTheDevice';
import { clockReady, elsewhereReady, personReady, promiseReady, roomReady, roundReady } from './ofTheRecord';
import type { ReadyLine } from './readiness';

/** Bytes of the trial: some two dozen photos, a few seconds on a tablet. Of our own making. */
export const trialBytes = 100_000_000;

interface Checking {
  /** Each line as soon as it is known, in the order of `readyAbout`. */
  line(line: ReadyLine): void;
  /** Bytes of the trial kept so far. */
  trial?(kept: number, of: number): void;
  readonly bytes?: number;
}

/** Looks at everything a day in the field rests on, one after another. To be called from a touch: a camera is asked for. */
export const checkReady = async (desk: Desk, { line, trial, bytes = trialBytes }: Checking): Promise<void> => {
  const looks: readonly (() => Promise<ReadyLine>)[] = [
    offlineReady,
    installedReady,
    () => roomReady(desk, bytes, (kept) => trial?.(kept, bytes)),
    promiseReady,
    () => elsewhereReady(desk),
    cameraReady,
    () => clockReady(desk),
    awakeReady,
    batteryReady,
    () => personReady(desk),
    () => roundReady(desk),
  ];
  for (const look of looks) line(await look());
};
