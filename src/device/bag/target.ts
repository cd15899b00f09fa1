/** Where a bag is written to, bite by bite. */
export interface Target {
  write(bite: Uint8Array<ArrayBuffer>): Promise<void>;
  /** All is written: the file as it now lies there. */
  done(): Promise<File>;
  /** Leaves nothing behind. */
  drop(): Promise<void>;
}

/** Bites are handed over to the browser in pieces of this size, which it may put on the disk. Bytes. */
const piece = 8_000_000;

/** In the browser's keeping: where there are no files of the app's own. */
export const memoryTarget = (name: string, mime: string): Target => {
  const pieces: Blob[] = [];
  let bites: Uint8Array<ArrayBuffer>[] = [];
  let held = 0;
  const handOver = () => {
    pieces.push(new Blob(bites));
    bites = [];
    held = 0;
  };
  return {
    write: async (bite) => {
      bites.push(bite);
      held += bite.byteLength;
      if (held >= piece) handOver();
    },
    done: async () => {
      handOver();
      return new File(pieces, name, { type: mime });
    },
    drop: async () => {
      pieces.length = 0;
      bites = [];
    },
  };
};

/** Straight into a file the person picked, which stays as it was until all is written. */
export const pickedTarget = async (handle: FileSystemFileHandle): Promise<Target> => {
  const writable = await handle.createWritable();
  return {
    write: (bite) => writable.write(bite),
    done: async () => {
      await writable.close();
      return handle.getFile();
    },
    drop: () => writable.abort().catch(() => undefined),
  };
};
