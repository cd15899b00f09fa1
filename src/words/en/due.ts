export const due = {
  title: 'What is due',
};
