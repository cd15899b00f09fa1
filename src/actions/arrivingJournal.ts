/** Rows that name the photos an import is about to bring, from before the first of them until its entries are in. */
export const journalStart = 'arriving ';
