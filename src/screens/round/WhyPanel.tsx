import { reasonsNotLooked } from '../../engine/trade';
import { w } from '../../words';
import { usePad } from './PadContext';
import { Tile, Tiles } from './Tiles';

/** The second touch of "could not reach": why. It leaves the zone. */
export function WhyPanel() {
  const { leave } = usePad();
  return (
    <Tiles label={w.round.ask.why} wide>
      {reasonsNotLooked.map(({ id, name }) => (
        <Tile
          key={id}
          label={name.charAt(0).toUpperCase() + name.slice(1)}
          strong
          onTouch={() => leave({ how: 'not looked', reason: id })}
        />
      ))}
    </Tiles>
  );
}
