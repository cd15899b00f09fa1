export const plan = {
  title: 'Plan',
};
