import type { ReactNode } from 'react';

interface TileProps {
  readonly label: string;
  readonly detail?: ReactNode;
  readonly pressed?: boolean;
  /** Read out in place of the words on the tile. */
  readonly name?: string;
  readonly strong?: boolean;
  readonly onTouch: () => void;
}

/** One touch, one answer. */
export function Tile({ label, detail, pressed, name, strong, onTouch }: TileProps) {
  return (
    <button
      type="button"
      className={strong ? 'pad-tile strong' : 'pad-tile'}
      aria-label={name}
      aria-pressed={pressed}
      onClick={onTouch}
    >
      <span className="pad-tile-label">{label}</span>
      {detail && <span className="pad-tile-detail">{detail}</span>}
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
