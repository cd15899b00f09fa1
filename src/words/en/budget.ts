export const budget = {
  title: 'Budget of a year',
};
