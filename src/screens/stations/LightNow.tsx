import { useEffect } from 'react';
import { type Light, lightNow, sayLight } from '../../actions';
import { w } from '../../words';
import { Choice } from '../parts';
import { useDesk } from '../shell';

const words = w.stations.shots;
const lights: readonly Light[] = ['open shade', 'overcast', 'sun', 'artificial'];

interface LightNowProps {
  readonly light: Light | undefined;
  readonly setLight: (light: Light) => void;
}

/** Said once while the light stays as it is, not at each photo. */
export function LightNow({ light, setLight }: LightNowProps) {
  const desk = useDesk();
  useEffect(() => {
    void lightNow(desk).then((kept) => kept && setLight(kept));
  }, [desk, setLight]);
  return (
    <Choice
      label={words.light}
      hint={words.lightWhat}
      tiles="narrow"
      size="round"
      options={lights.map((value) => ({ value, label: words.lights[value] }))}
      value={light}
      onChange={(value) => {
        setLight(value);
        void sayLight(desk, value);
      }}
    />
  );
}
