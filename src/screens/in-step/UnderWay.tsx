import { w } from '../../words';
import { Progress } from '../parts';
import type { useStepping } from './useStepping';

const words = w.inStep;

/** How far the step is. */
export function UnderWay({ far, leaveOff }: Pick<ReturnType<typeof useStepping>, 'far' | 'leaveOff'>) {
  if (!far) return null;
  const label = far.doing ? words.doing[far.doing] : words.starting;
  return <Progress label={label} done={far.done} all={far.all} onCancel={leaveOff} />;
}
