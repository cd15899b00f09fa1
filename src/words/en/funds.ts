export const funds = {
  title: 'Funds',
};
