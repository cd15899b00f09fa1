import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** What about a work asks for a step before winter. */
export type ClosedFor = 'every work' | 'garden' | 'basin' | 'sprinkler' | 'ponding' | 'tree' | 'inserts' | 'road salt';

export interface CloseDownStep {
  readonly id: string;
  readonly name: string;
  readonly for: ClosedFor;
  readonly source: Source;
}

const step = (id: string, asked: ClosedFor, name: string): CloseDownStep => ({
  id,
  name,
  for: asked,
  source: practice,
});

export const closeDownSteps: readonly CloseDownStep[] = named('closeDownSteps', [
  step('last-look', 'every work', 'The last look of the year, and what was seen written down'),
  step('weep-holes', 'every work', 'Weep holes and drains of the base open; a straw goes in, nothing harder'),
  step('leaves', 'every work', 'Leaves out of folds, hats and laps'),
  step('loose', 'every work', 'Loose plates, fixings and labels looked at from the ground'),
  step('ponding', 'ponding', 'Where water stands: emptied, and the way out cleared'),
  step('basin', 'basin', 'Basin drained, filter out, pump and lights locked off by an electrician'),
  step('pipes', 'basin', 'Pipes blown out, taps open'),
  step('sprinklers', 'sprinkler', 'Sprinklers off and blown out'),
  step('branches', 'tree', 'Branches above seen to before the first storm'),
  step('inserts', 'inserts', 'Inserts: putty and gaskets looked at, no water behind them'),
  step('salt', 'road salt', 'No salt near it agreed again with the grounds staff'),
  step(
    'covers',
    'garden',
    'Covers only where a conservator asked for them: loose, breathing, never plastic on the metal',
  ),
  step('store', 'garden', 'Wax, detergent and sheets away from frost; rags out; what is left counted'),
  step('meters', 'garden', 'Batteries out of meters and lamps'),
  step('record', 'garden', 'The record carried out twice, one copy elsewhere, and printed for the file'),
  step('numbers', 'garden', 'Who is called after a winter storm: names and numbers at the door'),
]);
