import type { Measuring } from '../../actions';
import { kinds } from '../../engine/trade';
import { share, w } from '../../words';
import { Choice } from '../parts';
import { Select } from '../parts/Select';
import { kindName } from './subject';

const words = w.measure;

interface KindChoiceProps {
  readonly at: Measuring;
  readonly kind: string | undefined;
  readonly onChange: (kind: string) => void;
}

/** Kinds found or measured here as tiles, with what the eye said of them; all others told by their share in a list. */
export function KindChoice({ at, kind, onChange }: KindChoiceProps) {
  const here = at.kinds.includes(kind ?? '') || !kind ? at.kinds : [...at.kinds, kind];
  const others = kinds.filter(({ id, measure }) => measure === 'area' && !here.includes(id));
  const saidOf = (id: string) => {
    const said = at.byEye.find(({ body }) => body.kind === id)?.body.coverage;
    return said ? words.kindEye(share(said.value)) : words.kindNoEye;
  };
  return (
    <div className="stack">
      {here.length > 0 && (
        <Choice
          label={words.kind}
          labelUnseen
          options={here.map((value) => ({ value, label: kindName(value), detail: saidOf(value) }))}
          value={kind}
          onChange={onChange}
        />
      )}
      <Select
        label={here.length > 0 ? words.kindOther : words.kind}
        value=""
        onChange={(value) => value && onChange(value)}
        options={[
          { value: '', label: words.kindChoose },
          ...others.map(({ id, name }) => ({ value: id, label: name })),
        ]}
      />
    </div>
  );
}
