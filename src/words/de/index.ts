/** The German words, file by file as the English ones. To be looked through by a native speaker. */
export * as logbook from './logbook';
export * as look from './look';
export * as paperCondition from './paperCondition';
export * as paperHub from './paperHub';
export * as paperLayout from './paperLayout';
export * as parts from './parts';
export * as round from './round';
export * as sculptures from './sculptures';
export * as settings from './settings';
export * as shell from './shell';
export * as walk from './walk';
