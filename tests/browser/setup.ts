import { findChromium } from './chromium';

/** Before any test's clock runs: bringing a Chromium may take minutes. */
export const setup = () => {
  findChromium();
};
