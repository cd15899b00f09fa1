/** Ways to go on with a work, what they cost over the years and what waiting costs. */
export {};
