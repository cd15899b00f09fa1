import { w } from '../../words';
import { Button, Sheet } from '../parts';

const words = w.keeping.installFirst;

interface InstallFirstProps {
  readonly onClose: () => void;
  /** She goes on in the browser, knowing what that means. */
  readonly onAllTheSame: () => void;
}

/** Before the first entry on an iPad: what is entered in the browser does not move to the installed app, and is deleted after a week unused. */
export function InstallFirst({ onClose, onAllTheSame }: InstallFirstProps) {
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={
        <>
          <Button kind="quiet" onClick={onAllTheSame}>
            {words.allTheSame}
          </Button>
          <Button kind="main" onClick={onClose}>
            {words.shallInstall}
          </Button>
        </>
      }
    >
      <p>{words.why}</p>
      <ol>
        {words.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p className="soft">{words.allTheSameWhat}</p>
    </Sheet>
  );
}
