export const options = {
  title: 'Options',
};
