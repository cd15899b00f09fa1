import type { Tripwire } from '../engine/watch';
import { decisions as words } from './en/decisions';
import type { NameOfThing } from './en/sentence';
import { date, measureNumber, number } from './format';

/** What a tripwire says, as one sentence without its full stop. In her own words where she gave some. */
export const tripwireText = (
  wire: Pick<Tripwire, 'sort' | 'zone' | 'level' | 'times' | 'by' | 'words'>,
  names: NameOfThing,
): string => {
  if (wire.words) return wire.words;
  const say = words.wire[wire.sort];
  if (!say) return words.unknownWire(wire.sort);
  const whole = wire.sort === 'green over' || wire.sort === 'bare over' || wire.sort === 'index under';
  const zone = wire.zone ? (names(wire.zone) ?? words.zoneGone) : whole ? words.wholeWork : words.anyZone;
  const inSquares = wire.sort === 'green over' || wire.sort === 'bare over';
  const level =
    wire.level === undefined ? '' : inSquares ? measureNumber('area', wire.level, 2) : number(wire.level, 2);
  return say(zone, level, String(wire.times ?? 1), wire.by ? date(wire.by) : '');
};
