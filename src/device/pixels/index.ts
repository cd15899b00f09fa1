/** What is counted pixel by pixel, beside the page. */
export {};
