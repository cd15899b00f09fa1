export const money = {
  title: 'How money is reckoned',
};
