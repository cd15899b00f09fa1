export const careDay = {
  title: 'Wash and wax day',
};
