import type { ZoneTouch } from '../../engine/record';
import { type Group, type KindOfFinding, kinds } from '../../engine/trade';
import { w } from '../../words';
import { usePad } from './PadContext';
import { Tile, Tiles } from './Tiles';

const words = w.round;
const groups = Object.keys(words.group) as Group[];

const begin = (kind: KindOfFinding): ZoneTouch => ({
  do: 'kind',
  kind: kind.id,
  measure: kind.measure,
  ...(kind.asksOrigin ? {} : { origin: 'metal' as const }),
});

/** Kinds this work shows most, then the groups all kinds stand in. */
export function KindTiles() {
  const { view, touch } = usePad();
  const first = view.draft.findings.length === 0;
  return (
    <>
      {view.often.length > 0 && (
        <Tiles label={words.zone.often} wide>
          {view.often.map((kind) => (
            <Tile key={kind.id} label={kind.name} onTouch={() => touch(begin(kind))} />
          ))}
        </Tiles>
      )}
      <Tiles label={first ? words.zone.addFirst : words.zone.add}>
        {groups.map((group) => (
          <Tile key={group} label={words.group[group]} onTouch={() => touch({ do: 'group', group })} />
        ))}
      </Tiles>
    </>
  );
}

/** The kinds of one group, each with a line to hold against the surface. */
export function KindsOfGroup({ group }: { readonly group: string }) {
  const { touch } = usePad();
  const name = words.group[group as Group] ?? group;
  return (
    <Tiles label={words.ask.kinds(name)} wide>
      {kinds
        .filter((kind) => kind.group === group)
        .map((kind) => (
          <Tile key={kind.id} label={kind.name} detail={kind.looksLike} onTouch={() => touch(begin(kind))} />
        ))}
    </Tiles>
  );
}
