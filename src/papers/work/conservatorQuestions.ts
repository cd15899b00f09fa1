/** What a conservator is asked, in the order of the page; the words stand under the same codes. */
export const conservatorQuestions = ['missing', 'going', 'settle', 'leave', 'never', 'next', 'other'] as const;
export type ConservatorQuestion = (typeof conservatorQuestions)[number];
