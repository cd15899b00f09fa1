import { useState } from 'react';
import { date, w } from '../../words';
import { Button, CrossIcon, Field, Tick } from '../parts';
import { useTyped } from '../shell';
import { ownKey, type useTicks } from './useTicks';

const words = w.year;

/** Lines somebody put on the list herself. */
export function OwnItems({ ticks }: { readonly ticks: ReturnType<typeof useTicks> }) {
  const [what, setWhat] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['line to pack', undefined], { what: [what, setWhat] });
  const add = () => {
    const text = what.trim();
    setTried(text === '');
    if (text === '') return;
    if (!ticks.own.includes(text)) ticks.setOwn([...ticks.own, text]);
    typed.kept();
    setWhat('');
  };
  return (
    <>
      <div className="tick-list">
        {ticks.own.map((item) => {
          const on = ticks.tickedOn(ownKey(item));
          return (
            <div key={item} className="tick-row">
              <Tick
                label={item}
                detail={on && words.ticked(date(on))}
                checked={on !== undefined}
                onChange={(checked) => ticks.turn(ownKey(item), checked)}
              />
              <span className="not-printed">
                <Button
                  kind="quiet"
                  icon={<CrossIcon />}
                  aria-label={words.packing.ownRemove(item)}
                  onClick={() => ticks.setOwn(ticks.own.filter((other) => other !== item))}
                />
              </span>
            </div>
          );
        })}
      </div>
      {typed.line}
      <div className="row not-printed">
        <div className="grow">
          <Field
            label={words.packing.own}
            value={what}
            onChange={setWhat}
            maxLength={100}
            error={tried && !what.trim() ? words.packing.ownMissing : undefined}
            optional
          />
        </div>
        <Button onClick={add}>{words.packing.ownAdd}</Button>
      </div>
    </>
  );
}
