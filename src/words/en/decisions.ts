export const decisions = {
  title: 'Decisions',
};
