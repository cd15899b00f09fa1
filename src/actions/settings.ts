import { deviceBox } from '../device/box';
import { settingsBox, settingsKept } from '../device/settingsKept';
import type { Known } from './desk';

/** What this device is set to. Never in the record, never carried. */
export interface Settings {
  readonly theme: 'light' | 'sun';
  readonly hand: 'left' | 'right';
  readonly gloves: boolean;
  /** Drops on the glass: touches too short for a finger do nothing on the ladder, and the glass can be locked. */
  readonly wetGlass: boolean;
  /** Two people: one calls from the ladder, one taps on the ground. */
  readonly callAndTap: boolean;
  readonly ownEye: boolean;
  /** Thing name of the surveyor at work, or ''. */
  readonly surveyor: string;
  /** What lengths, areas and temperatures are shown and typed in; the record holds metres and degrees Celsius. */
  readonly units: 'metric' | 'us';
  /** Language, and the way days and numbers are written. Both hold from the next start of the page. */
  readonly tongue: 'en-GB' | 'en-US' | 'de-DE';
  /** What the printer holds, for what must come out true to size. */
  readonly paper: 'A4' | 'Letter';
  /** Photos keep the place their camera wrote into them; it is blanked otherwise. */
  readonly keepPlace: boolean;
}

const usual: Settings = {
  theme: 'light',
  hand: 'right',
  gloves: false,
  wetGlass: false,
  callAndTap: false,
  ownEye: true,
  surveyor: '',
  units: 'metric',
  tongue: 'en-GB',
  paper: 'A4',
  keepPlace: false,
};

const allowed: { readonly [K in keyof Settings]: (value: unknown) => boolean } = {
  theme: (v) => v === 'light' || v === 'sun',
  hand: (v) => v === 'left' || v === 'right',
  gloves: (v) => typeof v === 'boolean',
  wetGlass: (v) => typeof v === 'boolean',
  callAndTap: (v) => typeof v === 'boolean',
  ownEye: (v) => typeof v === 'boolean',
  surveyor: (v) => typeof v === 'string',
  paper: (v) => v === 'A4' || v === 'Letter',
  units: (v) => v === 'metric' || v === 'us',
  tongue: (v) => v === 'en-GB' || v === 'en-US' || v === 'de-DE',
  keepPlace: (v) => typeof v === 'boolean',
};

const listeners = new Set<() => void>();
let present: Settings | undefined;

const read = (): Settings => {
  const found = settingsKept();
  const good = (Object.keys(allowed) as (keyof Settings)[]).filter((key) => allowed[key](found[key]));
  return { ...usual, ...Object.fromEntries(good.map((key) => [key, found[key]])) } as Settings;
};

export const settings: Known<Settings> = {
  subscribe: (changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  },
  get: () => {
    present ??= read();
    return present;
  },
};

export const setSetting = <K extends keyof Settings>(key: K, value: Settings[K]): void => {
  present = { ...settings.get(), [key]: value } as Settings;
  deviceBox.write(settingsBox, present);
  for (const changed of listeners) changed();
};
