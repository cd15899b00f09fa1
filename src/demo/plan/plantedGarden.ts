import type { Desk } from '../../actions';
import type { Drawing } from '../photograph';

/** One planted work of the invented garden. */
export interface PlantedWork {
  readonly sculpture: string;
  /** Zones by letter. */
  readonly zones: ReadonlyMap<string, string>;
}

/** What the parts of the plan have to hand while the garden is planted. */
export interface PlantedGarden {
  readonly desk: Desk;
  /** By number, SW-01 to SW-06. */
  readonly works: ReadonlyMap<string, PlantedWork>;
  /** Keeps a drawn picture, to be taken in as a photo. */
  readonly draw: Drawing;
  /** Things made on the way that another part speaks of later, by a plain name: "campaign SW-02". */
  readonly things: Map<string, string>;
}

/** Something that happens in the garden on a day. On one day, what the tables list first happens first. */
export interface DemoEvent {
  readonly day: string;
  run(): Promise<void>;
}

/** The thing a part before this one made; a garden whose events are in the wrong order is a fault of ours. */
export const madeBefore = ({ things }: PlantedGarden, name: string): string => {
  const thing = things.get(name);
  if (!thing) throw new Error(`Nothing called "${name}" was planted before.`);
  return thing;
};
