interface Device {
  readonly userAgent: string;
  readonly maxTouchPoints: number;
}

/**
 * True on an iPad or iPhone in a browser tab: there the page's data is deleted after a week without use, and what was
 * entered does not move to the installed app. An iPad calls itself a Mac, but no Mac has a touch screen.
 */
export const asksForHomeScreen = (device: Device, standalone: boolean): boolean => {
  const touches =
    /iPad|iPhone/.test(device.userAgent) || (/Macintosh/.test(device.userAgent) && device.maxTouchPoints > 1);
  return touches && !standalone;
};
