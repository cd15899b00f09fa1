/** Quantities from zones, bids beside each other, what a paper must hold. */
export {};
