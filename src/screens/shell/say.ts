type Told = (text: string) => void;

const listeners = new Set<Told>();

/** Says something in the one live region: "Zone added." Read out without moving the focus, and shown for a while. */
export const say = (text: string): void => {
  for (const told of listeners) told(text);
};

export const hearSaid = (told: Told): (() => void) => {
  listeners.add(told);
  return () => listeners.delete(told);
};
