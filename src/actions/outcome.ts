import { StoreProblem } from '../device/storeProblem';
import type { Reason } from '../engine/record';
import type { Outcome } from './desk';
import { noteFull } from './fullDevice';

/** Thrown inside a deed to leave it with a sentence; nothing is stored. */
export class Refused extends Error {
  readonly reason: Reason;
  constructor(reason: Reason) {
    super(reason.code);
    this.reason = reason;
  }
}

export const refuse = (reason: Reason): never => {
  throw new Refused(reason);
};

/** Runs a deed; a refusal or a fault of the store becomes an outcome, anything else is a fault of ours and is thrown on. */
export const attempt = async <T extends object>(deed: () => Promise<T>): Promise<Outcome<T>> => {
  try {
    return { ok: true, ...(await deed()) };
  } catch (error) {
    if (!(error instanceof Refused || error instanceof StoreProblem)) throw error;
    if (error.reason.code === 'device full') noteFull();
    return { ok: false, reason: error.reason };
  }
};

/** The value of an outcome inside another deed; its refusal becomes that deed's. */
export const must = <T extends object>(outcome: Outcome<T>): { ok: true } & T =>
  outcome.ok ? outcome : refuse(outcome.reason);
