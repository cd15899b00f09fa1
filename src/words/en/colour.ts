/** Words of the screens of colour. */
export const colour = {
  title: 'colour',
};
