export const grounds = {
  title: 'Agreements with the grounds staff',
};
