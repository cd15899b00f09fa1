export const moves = {
  title: 'Moves and loans',
};
