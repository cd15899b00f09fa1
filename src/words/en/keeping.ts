/** Words of the screen KeepingScreen. */
export const keeping = {
  title: 'Keeping it safe',
  lead: 'How safely the record lies on this device, and what to do for it.',
} as const;
