export const year = {
  title: 'The year',
};
