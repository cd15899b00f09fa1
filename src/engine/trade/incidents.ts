import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** What can happen to a work between rounds, and what is done first. Nobody climbs, pulls or repairs to find out more. */
export interface IncidentSort {
  readonly id: string;
  readonly name: string;
  /** In the order to do it; people come before metal. */
  readonly first: readonly string[];
  readonly source: Source;
}

const incident = (id: string, name: string, ...first: string[]): IncidentSort => ({
  id,
  name,
  first,
  source: practice,
});

const apart = 'Keep people away: tape, cones, a person who stands there.';
const asItIs = 'Photograph it as it is, with something to show the size, before anything is moved.';

export const incidentSorts: readonly IncidentSort[] = named('incidentSorts', [
  incident(
    'storm',
    'Storm, or a branch on it',
    apart,
    'Stay out from under trees and loose parts while the wind is up.',
    asItIs,
  ),
  incident(
    'blow',
    'A blow: vehicle, mower, ball',
    apart,
    asItIs,
    'Ask whether the fixing or the base gave: an engineer says when it is safe.',
  ),
  incident(
    'graffiti',
    'Paint, marker, sticker',
    asItIs,
    'Leave it: no solvent, no scrubbing, no pressure washer. What takes it off without the patina is for a conservator to say.',
  ),
  incident(
    'vandalism',
    'Scratched, broken, climbed on',
    apart,
    asItIs,
    'Gather pieces in bags with the place written on.',
  ),
  incident('theft', 'Something missing', 'Touch nothing: the police come first.', asItIs),
  incident(
    'flood',
    'High water, a burst pipe',
    'Power off and locked off by a licensed electrician before anybody steps in.',
    asItIs,
    'Mark the waterline and note whether the water was salt.',
  ),
  incident(
    'fire',
    'Fire, lightning, fireworks',
    'Fire brigade first. Let the metal cool by itself: no water on hot bronze or glass.',
    asItIs,
  ),
  incident('spill', 'Something spilt or sprayed on it', 'Find out what it was; keep its label.', asItIs),
  incident(
    'insert',
    'An insert cracked or loose',
    apart,
    'Leave the pieces where they sit if they are held; gather the fallen ones.',
    asItIs,
  ),
  incident('ice', 'Frost or ice', apart, 'Break no ice off and pour nothing on it.', asItIs),
  incident('other', 'Other', apart, asItIs),
]);

export const incidentSortOf = (id: string): IncidentSort | undefined => incidentSorts.find((row) => row.id === id);
