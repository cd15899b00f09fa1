/** Words of the screens of compare. */
export const compare = {
  title: 'compare',
};
