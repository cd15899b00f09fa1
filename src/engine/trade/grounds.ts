import { named } from './named';
import type { Source } from './source';

const own: Source = {
  text: 'Common practice, no source; distances are a beginning of our own, to be agreed on the spot.',
  sure: 'own choice',
};

/** What those who keep the grounds can do for a bronze, or to it. */
export interface GroundsTopic {
  readonly id: string;
  readonly name: string;
  /** A sentence to begin an agreement with. */
  readonly ask: string;
  readonly source: Source;
}

const topic = (id: string, name: string, ask: string): GroundsTopic => ({ id, name, ask, source: own });

export const groundsTopics: readonly GroundsTopic[] = named('groundsTopics', [
  topic(
    'sprinklers',
    'Sprinklers',
    'No sprinkler reaches the metal; heads are turned or moved, and looked at each spring.',
  ),
  topic('mowing', 'Mowing and trimming', 'No string trimmer within 50 cm of a base; that strip is cut by hand.'),
  topic('salt', 'Salt in winter', 'No salt within 5 m of a work; grit or sand instead.'),
  topic(
    'fertiliser',
    'Fertiliser and weedkiller',
    'Nothing is spread or sprayed within 3 m of a work, and never in wind.',
  ),
  topic('washing', 'Washing', 'No pressure washer and no detergent on the works or their bases; tell us, and we wash.'),
  topic('leaves', 'Leaves and blowers', 'Leaves are taken from bases and weep holes by hand; the blower points away.'),
  topic(
    'trees',
    'Trees above',
    'Branches over a work are cut back before they touch or drip; we say when nobody is below.',
  ),
  topic(
    'drains',
    'Drains and basins',
    'Drains, overflow and basin filter are cleared on the day agreed, and told when they are not.',
  ),
  topic('events', 'Events and vehicles', 'No tent, stage, vehicle or cable within 2 m of a work without asking.'),
  topic(
    'telling',
    'Telling us',
    'Whoever sees a change, a blow or paint says so the same day, and leaves it as it is.',
  ),
  topic('other', 'Other', ''),
]);

export const groundsTopicOf = (id: string): GroundsTopic | undefined => groundsTopics.find((row) => row.id === id);
