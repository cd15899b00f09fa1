/** The German words, file by file as the English ones. To be looked through by a native speaker. */
export * as parts from './parts';
