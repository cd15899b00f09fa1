export const campaign = {
  title: 'Campaigns',
};
