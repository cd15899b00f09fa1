import { Button } from './Button';
import './heldLine.css';

interface HeldLineProps {
  /** Why what is shown is held as it is. */
  readonly waits: string;
  /** What came since, and the button that takes it. */
  readonly came: string;
  readonly take: string;
  readonly shown: 'waits' | 'came' | 'neither';
  readonly onTake: () => void;
}

/** One of two lines in the room of the larger one: what comes moves nothing under it. */
export function HeldLine({ waits, came, take, shown, onTake }: HeldLineProps) {
  const away = (line: 'waits' | 'came') => (shown === line ? undefined : true);
  return (
    <div className="held-line not-printed">
      <p data-away={away('waits')}>{waits}</p>
      <div className="row" data-away={away('came')}>
        <p className="grow">{came}</p>
        <Button size="round" onClick={onTake}>
          {take}
        </Button>
      </div>
    </div>
  );
}
