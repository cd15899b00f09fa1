/** Words of the screen BringScreen. */
export const bring = {
  title: 'Bring in what you have',
  lead: 'Lists, old photos and earlier reports, taken over into the record.',
} as const;
