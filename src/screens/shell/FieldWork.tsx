import { GlassLock } from './GlassLock';
import { BatteryLow } from './LowNotices';

/** What goes along on every screen of the ladder. */
export function FieldWork() {
  return (
    <>
      <BatteryLow />
      <GlassLock />
    </>
  );
}
