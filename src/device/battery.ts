/** Share of the charge, 0 to 1, and whether it is being filled. */
export interface Battery {
  readonly level: number;
  readonly charging: boolean;
}

interface BatteryManager extends EventTarget, Battery {}

/** The Battery Status API (W3C Working Draft): in Chromium; Firefox and Safari took it away or never had it. */
const manager = async (): Promise<BatteryManager | undefined> => {
  const asking = globalThis.navigator as { getBattery?: () => Promise<BatteryManager> } | undefined;
  try {
    return await asking?.getBattery?.();
  } catch {
    return undefined;
  }
};

const read = ({ level, charging }: BatteryManager): Battery => ({ level, charging });

/** Undefined where the browser does not tell. */
export const batteryNow = async (): Promise<Battery | undefined> => {
  const found = await manager();
  return found && read(found);
};

/** Tells the charge now and whenever it changes; says nothing where the browser does not. Gives the way to stop. */
export const watchBattery = (told: (battery: Battery) => void): (() => void) => {
  let stopped = false;
  let stop = () => {
    stopped = true;
  };
  void manager().then((found) => {
    if (!found || stopped) return;
    const tell = () => told(read(found));
    const events = ['levelchange', 'chargingchange'];
    for (const event of events) found.addEventListener(event, tell);
    stop = () => {
      for (const event of events) found.removeEventListener(event, tell);
    };
    tell();
  });
  return () => stop();
};
