/** The worker: bags are written, read and checked here, beside the page. */
export {};
