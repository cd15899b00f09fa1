import { useEffect, useState } from 'react';
import { type Battery, deviceFull, fullUnderstood, watchBattery } from '../../actions';
import { w } from '../../words';
import { Button, LinkButton, Notice } from '../parts';
import { pathTo } from './paths';
import { useQuestion } from './useQuestion';

const words = w.field;

/** Of our own making: what is left of a day outdoors in the cold, and the last that is told. Shares of the charge, falling. */
const toldAt = [0.2, 0.1] as const;

/** How many of the steps the charge has fallen to; 0 while it is enough, or being filled. */
const stepsFallen = ({ level, charging }: Battery): number =>
  charging ? 0 : toldAt.filter((step) => level <= step).length;

/** On the screens of the round: the charge is going to its end. Told once at each step, where the browser tells it at all. */
export function BatteryLow() {
  const [battery, setBattery] = useState<Battery>();
  const [understood, setUnderstood] = useState(0);
  useEffect(() => watchBattery(setBattery), []);
  if (!battery) return null;
  const fallen = stepsFallen(battery);
  if (fallen <= understood) return null;
  return (
    <div className="shell-notice not-printed">
      <Notice
        kind="caution"
        title={words.battery.low(Math.round(battery.level * 100))}
        actions={
          <Button size="round" onClick={() => setUnderstood(fallen)}>
            {words.battery.understood}
          </Button>
        }
      >
        <p>{words.battery.lowWhat}</p>
      </Notice>
    </div>
  );
}

/** A write was refused for want of space: it stands until it is understood, longer than the sentence at the place it happened. */
export function DeviceFull() {
  const full = useQuestion(deviceFull);
  if (!full) return null;
  return (
    <div className="shell-notice not-printed">
      <Notice
        kind="caution"
        title={words.full.title}
        actions={
          <>
            <LinkButton to={pathTo.keeping()} size="round">
              {words.full.room}
            </LinkButton>
            <Button size="round" onClick={fullUnderstood}>
              {words.full.understood}
            </Button>
          </>
        }
      >
        <p>{words.full.what}</p>
      </Notice>
    </div>
  );
}
