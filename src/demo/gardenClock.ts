/** The garden's own time and ids: a clock that is set by hand, and UUIDv7s made from it and a counter, the same at every build. */
export interface GardenClock {
  /** Sets the clock to nine in the morning of a day; the day must not lie before the one it shows. */
  turnTo(day: string): void;
  /** So many seconds go by. */
  pass(seconds: number): void;
  now(): string;
  today(): string;
  newId(): string;
}

export const gardenClock = (from: string): GardenClock => {
  let ms = Date.parse(`${from}T09:00:00Z`);
  let made = 0;
  const stamp = () => {
    ms += 4000;
    return ms;
  };
  return {
    turnTo: (day) => {
      ms = Math.max(ms, Date.parse(`${day}T09:00:00Z`));
    },
    pass: (seconds) => {
      ms += 1000 * seconds;
    },
    now: () => new Date(stamp()).toISOString().replace('Z', '+00:00'),
    today: () => new Date(ms).toISOString().slice(0, 10),
    newId: () => {
      made += 1;
      const time = ms.toString(16).padStart(12, '0');
      const count = made.toString(16).padStart(12, '0');
      return `${time.slice(0, 8)}-${time.slice(8)}-7${count.slice(0, 3)}-8000-${count}`;
    },
  };
};
