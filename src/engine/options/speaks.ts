import type { Source } from '../trade';
import type { OptionReason } from './reasonCodes';

interface Speaks {
  /** Codes of trade/options. */
  readonly for: readonly string[];
  readonly against: readonly string[];
}

const [keep, local, strip, cause, look, wait] = [
  'keep waxing',
  'wax and local treatment',
  'strip and repatinate',
  'cause first',
  'investigate',
  'wait',
] as const;

/** Which way each thing the record shows speaks for, and which against. It weighs nothing and decides nothing. */
export const speaks = {
  'option: stop word': { for: [look], against: [keep, local, strip, wait] },
  'option: cause open': { for: [cause], against: [local, strip] },
  'option: cause within reach': { for: [cause], against: [] },
  'option: cause just removed': { for: [wait], against: [local, strip] },
  'option: waxing does not hold': { for: [look, local, strip], against: [keep, wait] },
  'option: hold short': { for: [local, strip], against: [keep] },
  'option: holds getting shorter': { for: [look], against: [wait] },
  'option: hold long': { for: [keep], against: [strip] },
  'option: green grows surely': { for: [local, strip], against: [wait, keep] },
  'option: green wide': { for: [strip], against: [local] },
  'option: green in few places': { for: [local], against: [strip] },
  'option: nothing presses': { for: [wait, keep], against: [local, strip] },
  'option: too little known of holds': { for: [look], against: [strip] },
  'option: no round yet': { for: [look], against: [local, strip] },
  'option: stripped before': { for: [], against: [strip] },
  'option: inserts near': { for: [], against: [strip] },
} as const satisfies Partial<Record<OptionReason, Speaks>>;

export const speaksSource: Source = { text: 'Chosen for this project', sure: 'own choice' };
