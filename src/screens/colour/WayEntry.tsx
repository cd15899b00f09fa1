import { typedNumber, w } from '../../words';
import { Choice, Field } from '../parts';
import { type WayText, wayOptions } from './wayOfReading';

const words = w.colour.way;

interface WayEntryProps {
  readonly way: WayText;
  readonly onChange: (way: WayText) => void;
  /** Keeping was tried: what is missing is said. */
  readonly tried: boolean;
}

/** Illuminant, observer, geometry and opening: what two readings must share. Nothing is chosen beforehand. */
export function WayEntry({ way, onChange, tried }: WayEntryProps) {
  const missing = (said: unknown) => (tried && !said ? words.missing : undefined);
  return (
    <>
      <Choice
        label={words.illuminant}
        options={wayOptions.illuminants}
        value={way.illuminant}
        onChange={(illuminant) => onChange({ ...way, illuminant })}
        error={missing(way.illuminant)}
      />
      <Choice
        label={words.observer}
        options={wayOptions.observers}
        value={way.observer}
        onChange={(observer) => onChange({ ...way, observer })}
        error={missing(way.observer)}
      />
      <Choice
        label={words.geometry}
        options={wayOptions.geometries}
        value={way.geometry}
        onChange={(geometry) => onChange({ ...way, geometry })}
        error={missing(way.geometry)}
      />
      <Field
        label={words.aperture}
        kind="number"
        unit="mm"
        value={way.aperture}
        onChange={(aperture) => onChange({ ...way, aperture })}
        error={way.aperture.trim() && typedNumber(way.aperture) === undefined ? words.apertureWrong : undefined}
        short
        optional
      />
    </>
  );
}
