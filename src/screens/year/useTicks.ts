import { useEffect, useRef, useState } from 'react';
import { type Planned, setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import { useDeed, useDesk } from '../shell';

type Ticks = BodyOf<'listTicks'>;

/** The ticks of one list. Each touch goes on from the one before, not from what was read: fingers are faster than the store. */
export const useTicks = (planned: Planned, list: Ticks['list'], of: string) => {
  const desk = useDesk();
  const name = nameOf.listTicks(list, of);
  const kept = planned.listTicks.find(({ thing }) => thing === name)?.body;
  const empty: Ticks = { list, of, ticked: [] };
  const last = useRef<Ticks>(kept ?? empty);
  /** Touches on their way into the store. What is read meanwhile is older than what they say. */
  const underWay = useRef(0);
  const shownList = useRef(name);
  const [shown, setShown] = useState<Ticks>(kept ?? empty);
  const { run, refused } = useDeed();
  useEffect(() => {
    const same = shownList.current === name;
    shownList.current = name;
    if (same && underWay.current > 0) return;
    const now = kept ?? { list, of, ticked: [] };
    last.current = now;
    setShown(now);
  }, [kept, list, of, name]);
  const say = (next: Ticks) => {
    last.current = next;
    setShown(next);
    underWay.current++;
    void run(() =>
      setPlanned(desk, 'listTicks', name, next).finally(() => {
        underWay.current--;
      }),
    );
  };
  const turn = (item: string, on: boolean) => {
    const others = last.current.ticked.filter((one) => one.item !== item);
    say({ ...last.current, ticked: on ? [...others, { item, on: desk.today() }] : others });
  };
  const setOwn = (own: readonly string[]) =>
    say({
      ...last.current,
      own: [...own],
      ticked: last.current.ticked.filter(
        ({ item }) => !item.startsWith(ownKey('')) || own.some((o) => ownKey(o) === item),
      ),
    });
  const tickedOn = (item: string): string | undefined => shown.ticked.find((one) => one.item === item)?.on;
  return { tickedOn, turn, own: shown.own ?? [], setOwn, refused } as const;
};

/** What somebody put on the list is ticked under its own words, as far as they go. */
export const ownKey = (what: string): string => `own ${what}`.slice(0, 120);
