export const hotWork = {
  title: 'Hot work',
};
