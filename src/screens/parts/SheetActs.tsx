import { Button } from './Button';

interface SheetActsProps {
  readonly save: string;
  readonly onSave: () => void;
  /** Only for what is there already. */
  readonly remove?: { readonly word: string; readonly go: () => void } | undefined;
  readonly busy: boolean;
}

/** What a sheet that describes one thing ends with: take it away where it is there, and keep. */
export function SheetActs({ save, onSave, remove, busy }: SheetActsProps) {
  return (
    <>
      {remove && (
        <Button kind="danger" disabled={busy} onClick={remove.go}>
          {remove.word}
        </Button>
      )}
      <Button kind="main" onClick={onSave} disabled={busy}>
        {save}
      </Button>
    </>
  );
}
