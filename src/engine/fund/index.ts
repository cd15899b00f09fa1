/** Money in hand, pledged and hoped, and what it comes to over time. */
export {};
