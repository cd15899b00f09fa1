/** Words of the logbook. */
export const logbook = {
  title: 'Logbook',
} as const;
