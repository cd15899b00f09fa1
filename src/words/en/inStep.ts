/** Words of the screen InStepScreen. */
export const inStep = {
  title: 'Keep in step',
  lead: 'One shared folder, and every tablet that reads and writes there holds the same survey.',
} as const;
