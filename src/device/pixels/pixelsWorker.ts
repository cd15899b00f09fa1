/** Beside the page; see vite.config.ts. */
export {};
