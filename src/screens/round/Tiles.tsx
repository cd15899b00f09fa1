import type { ReactNode } from 'react';

interface TileProps {
  readonly label: string;
  /** A line under the label: drawn by the style sheet and told to ears as a description, so that the name stays the one word to say. */
  readonly detail?: string;
  /** What is shown of it where there is no room. */
  readonly shortDetail?: string;
  readonly pressed?: boolean;
  /** Read out in place of the label, which it begins or ends with. */
  readonly name?: string;
  readonly strong?: boolean;
  readonly onTouch: () => void;
}

/** One touch, one answer. */
export function Tile({ label, detail, shortDetail = detail, pressed, name, strong, onTouch }: TileProps) {
  return (
    <button
      type="button"
      className={strong ? 'pad-tile strong' : 'pad-tile'}
      aria-label={name ?? (detail ? label : undefined)}
      aria-description={detail}
      aria-pressed={pressed}
      data-detail={detail}
      data-short={shortDetail}
      onClick={onTouch}
    >
      <span className="pad-tile-label">{label}</span>
    </button>
  );
}

interface TilesProps {
  readonly label: string;
  /** Whether the label is shown or only read out. */
  readonly unseen?: boolean;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

export function Tiles({ label, unseen, wide, children }: TilesProps) {
  return (
    <fieldset className="pad-group" aria-label={label}>
      {!unseen && (
        <p className="pad-group-label" aria-hidden="true">
          {label}
        </p>
      )}
      <div className={wide ? 'pad-tiles wide' : 'pad-tiles'}>{children}</div>
    </fieldset>
  );
}
