import { removeRunOff } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { AddRunOff } from './AddRunOff';

const words = w.zoneMap;

interface RunOffListProps {
  readonly runOffs: readonly Thing<'runOff'>[];
  readonly zones: readonly Thing<'zone'>[];
}

/** Where water runs, in words: also between zones that no side shows together. */
export function RunOffList({ runOffs, zones }: RunOffListProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const named = (zone: string) => {
    const body = zones.find(({ thing }) => thing === zone)?.body;
    return body && words.outline.zone(body.letter, body.name);
  };
  const rows = runOffs.flatMap(({ thing, body }) => {
    const [from, to] = [named(body.fromZone), named(body.toZone)];
    return from && to ? [{ thing, from, to }] : [];
  });
  return (
    <Section title={words.waterTitle}>
      {refused && <Notice kind="problem" title={refused} />}
      {rows.length === 0 && <p className="soft">{words.waterNone}</p>}
      <ul className="bare water-list">
        {rows.map(({ thing, from, to }) => (
          <li key={thing}>
            <span className="grow">{words.waterRow(from, to)}</span>
            <span className="not-printed">
              <Button
                kind="quiet"
                aria-label={words.waterRemove(from, to)}
                onClick={() =>
                  run(
                    () => removeRunOff(desk, thing),
                    () => say(words.waterRemoved),
                  )
                }
              >
                {w.sculptures.work.elevationRemove}
              </Button>
            </span>
          </li>
        ))}
      </ul>
      {zones.length > 1 && <AddRunOff zones={zones} />}
    </Section>
  );
}
