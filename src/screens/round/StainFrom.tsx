import { w } from '../../words';
import { usePad } from './PadContext';
import { Tile, Tiles } from './Tiles';

const words = w.round.card;

/** Optional: the zone a stain comes down from, by its letter. */
export function StainFrom({ chosen }: { readonly chosen: string | undefined }) {
  const { view, touch } = usePad();
  if (view.otherZones.length === 0) return null;
  return (
    <Tiles label={words.stainFrom}>
      {view.otherZones.map(({ thing, body }) => (
        <Tile
          key={thing}
          label={body.letter}
          name={words.stainZone(body.letter)}
          pressed={chosen === thing}
          onTouch={() => touch({ do: 'stain from', zone: thing })}
        />
      ))}
    </Tiles>
  );
}
