import { carry } from './en/carry';
import { logbook } from './en/logbook';
import { method } from './en/method';
import { nextSteps } from './en/nextSteps';
import { parts } from './en/parts';
import { look, round } from './en/round';
import { sculptures } from './en/sculptures';
import { settings } from './en/settings';
import { settle } from './en/settle';
import { shell } from './en/shell';
import { thenAndNow } from './en/thenAndNow';

export { deedNamed, type NameOfThing, sayReason } from './en/reasons';
export * from './format';

/** Every word on screen, by screen. */
export const w = {
  product: 'Patina Round',
  carry,
  logbook,
  look,
  method,
  nextSteps,
  parts,
  round,
  sculptures,
  settings,
  settle,
  shell,
  thenAndNow,
} as const;
