/** Words of the screens of measure. */
export const measure = {
  title: 'measure',
};
