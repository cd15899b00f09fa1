export const incidents = {
  title: 'Incidents',
};
