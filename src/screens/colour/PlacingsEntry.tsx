import { meanReading, strayPlacings } from '../../engine/colour';
import type { BodyOf } from '../../engine/record';
import { w } from '../../words';
import { Field, Notice } from '../parts';
import { Swatch } from './Swatch';
import { typedPlacings } from './typedPlacings';

const words = w.colour.sheet;

interface PlacingsEntryProps {
  readonly text: string;
  readonly onChange: (text: string) => void;
  readonly illuminant: BodyOf<'reading'>['illuminant'] | undefined;
  readonly tried: boolean;
}

/** What is wrong with what is typed so far, in a sentence; nothing while a line is still being typed. */
const faultOf = (text: string, tried: boolean): string | undefined => {
  const { values, wrong } = typedPlacings(text);
  if (!wrong) return tried && values.length === 0 ? words.placingsMissing : undefined;
  if (wrong.why === 'out of range') return words.lineOut(wrong.line);
  const lastLine = text.split('\n').length;
  return tried || wrong.line < lastLine ? words.lineWrong(wrong.line) : undefined;
};

/** One line a placing, read back as it was understood, with the mean and its colour. */
export function PlacingsEntry({ text, onChange, illuminant, tried }: PlacingsEntryProps) {
  const { values } = typedPlacings(text);
  const strays = strayPlacings(values);
  return (
    <>
      <Field
        label={words.placings}
        hint={words.placingsHint}
        kind="long"
        value={text}
        onChange={onChange}
        maxLength={4000}
        error={faultOf(text, tried)}
      />
      {values.length > 0 && (
        <table className="plain-table read-back">
          <caption>{words.readBack}</caption>
          <thead>
            <tr>
              <td />
              {['L*', 'a*', 'b*'].map((figure) => (
                <th key={figure} scope="col" className="of-number">
                  {figure}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {values.map((value, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: placings have no name but their place
              <Row key={i} name={String(i + 1)} value={value} />
            ))}
            {values.length > 1 && <Row name={words.mean} value={meanReading(values).mean} />}
          </tbody>
        </table>
      )}
      {values.length > 0 && (
        <Swatch value={meanReading(values).mean} illuminant={illuminant ?? 'D65'} what={words.mean} />
      )}
      {strays.map((i) => (
        <Notice key={i} kind="caution" title={words.stray(i + 1)} />
      ))}
    </>
  );
}

function Row({ name, value }: { readonly name: string; readonly value: { L: number; a: number; b: number } }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      {(['L', 'a', 'b'] as const).map((figure) => (
        <td key={figure} className="of-number">
          {w.colour.figure(value[figure])}
        </td>
      ))}
    </tr>
  );
}
