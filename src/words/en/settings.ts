/** Words of the settings. */
export const settings = {
  title: 'Settings',
} as const;
