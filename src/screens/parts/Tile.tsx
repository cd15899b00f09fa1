import { type InputHTMLAttributes, type ReactNode, useId } from 'react';

interface TileProps
  extends Pick<InputHTMLAttributes<HTMLInputElement>, 'type' | 'name' | 'value' | 'checked' | 'onChange'> {
  readonly label: string;
  readonly detail?: ReactNode;
  readonly picture?: ReactNode;
}

/** A native radio or check box as a big tile: its first line is its name, its second line describes it. */
export function Tile({ label, detail, picture, ...input }: TileProps) {
  const id = useId();
  return (
    <label className="tile">
      <input {...input} aria-labelledby={id} aria-describedby={detail ? `${id}-detail` : undefined} />
      <span className="tile-mark" aria-hidden="true" />
      {picture}
      <span className="tile-words">
        <span className="tile-label" id={id}>
          {label}
        </span>
        {detail && (
          <span className="tile-detail" id={`${id}-detail`}>
            {detail}
          </span>
        )}
      </span>
    </label>
  );
}
