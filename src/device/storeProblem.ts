import type { Reason } from '../engine/record';

/** Something the device refused, as a reason for a person. Nothing of the deed was stored. */
export class StoreProblem extends Error {
  readonly reason: Reason;
  constructor(reason: Reason, cause?: unknown) {
    super(reason.code, { cause });
    this.name = 'StoreProblem';
    this.reason = reason;
  }
}
