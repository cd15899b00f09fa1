/** The German words, file by file as the English ones. To be looked through by a native speaker. */
export * as logbook from './logbook';
export * as look from './look';
export * as nextSteps from './nextSteps';
export * as overTime from './overTime';
export * as paperCondition from './paperCondition';
export * as paperHub from './paperHub';
export * as paperLayout from './paperLayout';
export * as papers from './papers';
export * as parts from './parts';
export * as round from './round';
export * as sculptures from './sculptures';
export * as settings from './settings';
export * as shell from './shell';
export * as thenAndNow from './thenAndNow';
export * as walk from './walk';
