import { named } from './named';
import type { Source } from './source';

/** What may be at the root of what the surface shows: looked for, and dealt with, before anything is treated. */
export interface Cause {
  readonly id: string;
  readonly name: string;
  /** What one sees where it is at work. */
  readonly signs: string;
  /** What takes it away, or makes it less. */
  readonly remedy: string;
  /** Whose work that is. */
  readonly who: string;
  /** Exposures of a zone (trade/exposures) under which it is worth looking for. */
  readonly exposures: readonly string[];
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const cause = (
  id: string,
  name: string,
  exposures: readonly string[],
  signs: string,
  remedy: string,
  who: string,
): Cause => ({ id, name, signs, remedy, who, exposures, source: practice });

export const causes: readonly Cause[] = named('causes', [
  cause(
    'sprinkler',
    'Sprinkler',
    ['sprinkler'],
    'Scale or green on the side a lawn sprinkler reaches, none on the other.',
    'Turn, lower or move the head; water at another hour.',
    'Those who keep the grounds',
  ),
  cause(
    'basin spray',
    'Spray of a basin or fountain',
    ['spray', 'splash', 'waterline'],
    'A line at the height of the water, or a fan where the wind throws it.',
    'Lower the jet, stop it in wind, look at the treatment of the water.',
    'Whoever runs the fountain',
  ),
  cause(
    'drip',
    'Drip from above',
    ['drip'],
    'A streak that starts under an edge, a wire, a branch or another zone.',
    'Lead the water off above; mend the gutter; treat the zone it comes from first.',
    'Grounds, or the conservator where it comes from the work itself',
  ),
  cause(
    'tree',
    'Tree',
    ['tree'],
    'Sticky film, leaves in folds, rubbed spots at the height of a branch.',
    'Cut back what drips or rubs.',
    'Those who keep the trees',
  ),
  cause(
    'birds',
    'Birds',
    ['birds'],
    'Droppings on the same places every week.',
    'Wash more often; ask before anything is fixed to the work to keep them off.',
    'You, and the conservator for anything fixed',
  ),
  cause(
    'road salt',
    'De-icing salt',
    ['road salt', 'splash'],
    'Green or pale powder low down, on the side of a path or road, after winter.',
    'Sand or grit near the work instead of salt; rinse in spring.',
    'Those who clear the paths',
  ),
  cause(
    'fertiliser',
    'Fertiliser',
    ['mowing'],
    'Spots on the base and low edges after the lawn was fed.',
    'A strip without feed round the base.',
    'Those who keep the grounds',
  ),
  cause(
    'touch',
    'Touching and climbing',
    ['handled'],
    'Bright metal where hands, feet or seats reach, dark above.',
    'A sign, a plant, a step less near; or a decision to let it polish.',
    'You, with whoever answers for visitors',
  ),
  cause(
    'ponding',
    'Water that stands',
    ['ponding'],
    'A ring with a flat edge in a hollow.',
    'A way for the water to run off, which is a change of the work.',
    'The conservator',
  ),
  cause(
    'weep hole',
    'Weep hole blocked or leaking',
    ['joint', 'recess'],
    'Water or rust runs from a joint days after rain; ice marks in spring.',
    'Clear it with something softer than the metal; ask what runs out of it.',
    'You for clearing, the conservator for what runs out',
  ),
  cause(
    'dissimilar metal',
    'Another metal against the bronze',
    ['joint'],
    'Corrosion along a bolt, a bar or a clamp.',
    'Part them, or change the fixing.',
    'The conservator',
  ),
  cause(
    'base run-up',
    'Salt and damp out of the base',
    ['splash', 'ponding'],
    'A band of green or pale crust just above stone or concrete.',
    'Joint and drainage of the base.',
    'The conservator, with a mason',
  ),
]);

const byId = new Map(causes.map((row) => [row.id, row]));
export const causeOf = (id: string): Cause | undefined => byId.get(id);
