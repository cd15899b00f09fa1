import { appendFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';

/**
 * A Vitest reporter that keeps, in the file named by UNDER_WAY, which test files and tests have begun and not ended: where a suite
 * stands still, they are what it stands still in. In a file beside it stand those that were tried again, one a line.
 */
export default class UnderWay {
  begun = new Set();

  onTestModuleStart(module) {
    this.note(() => this.begun.add(module.moduleId));
  }

  onTestModuleEnd(module) {
    this.note(() => this.begun.delete(module.moduleId));
  }

  onTestCaseReady(test) {
    this.note(() => this.begun.add(`${test.module.moduleId} > ${test.fullName}`));
  }

  onTestCaseResult(test) {
    this.note(() => this.begun.delete(`${test.module.moduleId} > ${test.fullName}`));
    if (process.env.UNDER_WAY && (test.diagnostic()?.retryCount ?? 0) > 0)
      appendFileSync(
        againBeside(process.env.UNDER_WAY),
        `${relative('', test.module.moduleId)} > ${test.fullName.replaceAll('\n', ' ')}\n`,
      );
  }

  note(change) {
    change();
    if (process.env.UNDER_WAY) writeFileSync(process.env.UNDER_WAY, [...this.begun].join('\n'));
  }
}

/** Where the tests that were tried again are kept. */
export function againBeside(underWay) {
  return `${underWay}.again`;
}
