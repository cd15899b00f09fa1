/** What to treat within a sum, exactly, and what is left undone. */
export {};
