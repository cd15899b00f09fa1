import { type MapDraft, removeOutline, type SideOnMap } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { beginZone } from './drawn';
import { OutlineFacts } from './OutlineFacts';

const words = w.zoneMap.outline;

interface ZonePadProps {
  readonly zones: readonly Thing<'zone'>[];
  readonly side: SideOnMap;
  readonly chosen: Thing<'zone'> | undefined;
  readonly onBegin: (draft: MapDraft) => void;
}

/** The chosen zone: drawn, drawn again, set right; and always the way on to the next that is not drawn. */
export function ZonePad({ zones, side, chosen, onBegin }: ZonePadProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const drawnOf = (zone: Thing<'zone'>) => side.outlines.find((one) => one.zone === zone.thing);
  const drawn = chosen && drawnOf(chosen);
  const after = chosen ? zones.indexOf(chosen) + 1 : 0;
  const next = [...zones.slice(after), ...zones.slice(0, after)].find((zone) => zone !== chosen && !drawnOf(zone));
  const first = side.outlines.length === 0;
  const begin = (zone: Thing<'zone'>, label: string, main: boolean) => (
    <Button size="round" kind={main ? 'main' : 'plain'} onClick={() => onBegin(beginZone(zone.thing))}>
      {label}
    </Button>
  );
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      {chosen && <h2 className="draw-zone">{words.zone(chosen.body.letter, chosen.body.name)}</h2>}
      {!chosen && !next && <p role="status">{words.allDrawn}</p>}
      <div className="row by-hand">
        {chosen && !drawn && begin(chosen, words.begin(chosen.body.letter, chosen.body.name), true)}
        {chosen && drawn && (
          <>
            <Button
              size="round"
              onClick={() => onBegin({ doing: 'corners', zone: chosen.thing, outline: drawn.outline, at: null })}
            >
              {words.move}
            </Button>
            <Button size="round" onClick={() => onBegin(beginZone(chosen.thing, drawn.outline))}>
              {words.addPiece}
            </Button>
            {begin(chosen, words.drawAgain, false)}
            <Button
              kind="danger"
              size="round"
              onClick={() =>
                run(
                  () => removeOutline(desk, drawn.thing.thing),
                  () => say(words.removed),
                )
              }
            >
              {words.remove}
            </Button>
          </>
        )}
        {next &&
          (!chosen || drawn) &&
          begin(next, (first ? words.begin : words.next)(next.body.letter, next.body.name), true)}
      </div>
      {chosen && drawn && <OutlineFacts zone={chosen} side={side} drawn={drawn} />}
    </>
  );
}
