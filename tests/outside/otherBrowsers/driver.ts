/** A place in a page, as the browser's driver names it. */
export type Handle = unknown;

/** What a driver of a browser can do, whatever it speaks: WebDriver, or WebDriver BiDi. Each call has a limit of its own. */
export interface Driver {
  /** Name and version, as the browser says them. */
  readonly name: string;
  /** Folder downloads go to. */
  readonly downloads: string;
  goTo(url: string): Promise<void>;
  reload(): Promise<void>;
  /** Runs the body of an async function in the page, with `args` as its `arguments`, and gives what it returns. */
  ask<T>(body: string, ...args: readonly unknown[]): Promise<T>;
  /** The element a body returns, or undefined where it returns null. */
  find(body: string, ...args: readonly unknown[]): Promise<Handle | undefined>;
  /** The browser's own pointer comes down on the middle of it and goes up. */
  click(element: Handle): Promise<void>;
  type(element: Handle, text: string): Promise<void>;
  /** Hands files to an input of type file. */
  give(element: Handle, paths: readonly string[]): Promise<void>;
  /** PNG of what the window shows. */
  picture(): Promise<Buffer>;
  /** The page as the browser prints it (PDF), where its driver can. */
  print?(): Promise<Buffer>;
  /** Errors and warnings of pages so far. */
  faults(): Promise<readonly string[]>;
  /** Ends the browser with all its processes at once; its profile stays. */
  end(): Promise<void>;
}

/** Gives up after `seconds`, saying on what: nothing here may wait for ever. */
export function within<T>(seconds: number, what: string, promise: Promise<T>): Promise<T> {
  let late: NodeJS.Timeout | undefined;
  const limit = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new Error(`No answer within ${seconds} s: ${what}`)), seconds * 1000);
  });
  return Promise.race([promise, limit]).finally(() => clearTimeout(late));
}

/** A call that must be answered. */
export const callLimit = 30;
