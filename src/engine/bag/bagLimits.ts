/** What a bag may hold at most. Chosen for this project: fifty works over twenty years with their photos stay well under each. */
export const bagLimits = {
  files: 20_000,
  /** Bytes of any one file in it, unpacked. */
  fileBytes: 150_000_000,
  /** Bytes of everything in it, unpacked. */
  bytes: 40_000_000_000,
  /** A file unpacks to no more than so many times what it takes up, once it is larger than `smallBytes`. */
  ratio: 200,
  smallBytes: 100_000,
  /** Folders it may lie in: those a person, or a system that packed it again, put around it. */
  wrappings: 2,
  /** Letters of a path. */
  path: 200,
  /** Faults told before the rest is only counted. */
  faults: 20,
} as const;
