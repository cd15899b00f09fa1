/** Words of the screens about sculptures and their zones. */
export const sculptures = {
  title: 'Sculptures',
} as const;
