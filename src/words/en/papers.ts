/** Words of what lies in a bag to be read without the app: report and README. */
export const papers = {
  title: 'Condition survey',
} as const;
