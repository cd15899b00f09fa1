import { w } from '../../words';
import { Notice, Progress } from '../parts';
import type { useStepping } from './useStepping';

const words = w.inStep;

/** How far the step is, or why it was refused. */
export function UnderWay({ far, refused, leaveOff }: ReturnType<typeof useStepping>) {
  if (!far) return refused ? <Notice kind="problem" title={refused} /> : null;
  const label = far.doing ? words.doing[far.doing] : words.starting;
  return <Progress label={label} done={far.done} all={far.all} onCancel={leaveOff} />;
}
