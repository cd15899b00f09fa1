export const products = {
  title: 'Products in store',
};
