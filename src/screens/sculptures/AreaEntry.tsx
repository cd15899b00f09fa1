import { type Solid, solids, typedErrors } from '../../engine/condition';
import { w, whole } from '../../words';
import { AddIcon, Button, Choice, Field, FigureText } from '../parts';
import { Select } from '../parts/Select';
import { type AreaDraft, areaFrom, newPart, type PartDraft, sizesOf } from './areaDraft';

const words = w.sculptures.zone;
const methods = ['typed', 'solids', 'strips'] as const;

interface AreaEntryProps {
  readonly draft: AreaDraft;
  readonly onChange: (draft: AreaDraft) => void;
  /** The form was sent: say what is missing. */
  readonly tried: boolean;
}

/** A zone's area in one of three ways, summed while it is typed, always with its range. */
export function AreaEntry({ draft, onChange, tried }: AreaEntryProps) {
  const area = areaFrom(draft);
  const first: Solid = draft.method === 'strips' ? 'strip' : 'cylinder';
  const choose = (method: AreaDraft['method']) => {
    const solid: Solid = method === 'strips' ? 'strip' : 'cylinder';
    onChange({ ...draft, method, parts: method === 'typed' ? draft.parts : [newPart(0, solid)] });
  };
  const setPart = (part: PartDraft) =>
    onChange({ ...draft, parts: draft.parts.map((p) => (p.key === part.key ? part : p)) });
  const nextKey = 1 + Math.max(-1, ...draft.parts.map(({ key }) => key));
  return (
    <div className="stack">
      <Choice
        label={words.areaHow}
        options={methods.map((value) => ({ value, label: words.areaHows[value], detail: words.areaHowDetails[value] }))}
        value={draft.method}
        onChange={choose}
      />
      {draft.method === 'typed' ? (
        <>
          <Field
            label={words.areaTyped}
            takes="area"
            short
            value={draft.typed}
            onChange={(typed) => onChange({ ...draft, typed })}
            error={tried && !area ? words.areaMissing : undefined}
          />
          <Choice
            label={words.areaSure}
            options={typedErrors.map(({ id, name, error }) => ({
              value: id,
              label: name,
              detail: `± ${whole(error * 100)} %`,
            }))}
            value={draft.sure}
            onChange={(sure) => onChange({ ...draft, sure })}
          />
        </>
      ) : (
        <>
          {draft.parts.map((part, i) => (
            <Part
              key={part.key}
              part={part}
              title={draft.method === 'strips' ? words.strip(whole(i + 1)) : words.part(whole(i + 1))}
              onChange={setPart}
              onRemove={
                draft.parts.length > 1
                  ? () => onChange({ ...draft, parts: draft.parts.filter(({ key }) => key !== part.key) })
                  : undefined
              }
            />
          ))}
          <div className="row">
            <Button
              icon={<AddIcon />}
              onClick={() => onChange({ ...draft, parts: [...draft.parts, newPart(nextKey, first)] })}
            >
              {draft.method === 'strips' ? words.addStrip : words.addPart}
            </Button>
          </div>
          {tried && !area && <p className="field-error">{words.sizeMissing}</p>}
        </>
      )}
      <div className="area-sum" role="status">
        <span>{words.areaSum}</span>
        <FigureText figure={area ? { ...area, value: area.m2 } : null} as="m2" large />
      </div>
      <p className="small soft">{words.areaRange}</p>
    </div>
  );
}

interface PartProps {
  readonly part: PartDraft;
  readonly title: string;
  readonly onChange: (part: PartDraft) => void;
  readonly onRemove: (() => void) | undefined;
}

function Part({ part, title, onChange, onRemove }: PartProps) {
  return (
    <fieldset className="part">
      <legend>{title}</legend>
      {part.solid !== 'strip' && (
        <Select
          label={words.solid}
          value={part.solid}
          onChange={(solid) => onChange({ ...newPart(part.key, solid as Solid), share: part.share })}
          options={solids.filter(({ id }) => id !== 'strip').map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      {sizesOf(part.solid).map((asked, i) => (
        <Field
          key={asked}
          label={asked}
          takes="length"
          value={part.sizes[i] ?? ''}
          onChange={(size) => onChange({ ...part, sizes: part.sizes.map((s, at) => (at === i ? size : s)) })}
        />
      ))}
      <Field
        label={words.share}
        takes="percent"
        value={part.share}
        onChange={(share) => onChange({ ...part, share })}
      />
      {onRemove && (
        <Button kind="quiet" onClick={onRemove}>
          {words.removePart(title)}
        </Button>
      )}
    </fieldset>
  );
}
