import { writeFileSync } from 'node:fs';

/**
 * A Vitest reporter that keeps, in the file named by UNDER_WAY, which test files and tests have begun and not ended: where a suite
 * stands still, they are what it stands still in.
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
  }

  note(change) {
    change();
    if (process.env.UNDER_WAY) writeFileSync(process.env.UNDER_WAY, [...this.begun].join('\n'));
  }
}
