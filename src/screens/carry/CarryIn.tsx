import { type ChangeEvent, useRef, useState } from 'react';
import { acceptImport, type CarryPreview, openSurveyFile, type SurveyFileOpened, undoImport } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, FileIcon, LinkButton, Notice, Section } from '../parts';
import { pathTo, say, useDesk } from '../shell';
import { ImportProblems } from './ImportProblems';
import { ImportShown } from './ImportShown';
import { Progress } from './Progress';

const words = w.carry;

type NotOpened = Extract<SurveyFileOpened, { readonly ok: false }>;
type State =
  | { readonly at: 'start' }
  | { readonly at: 'reading' }
  | { readonly at: 'problems'; readonly file: string; readonly found: NotOpened }
  | { readonly at: 'preview'; readonly preview: CarryPreview; readonly fault?: string }
  | { readonly at: 'storing'; readonly done?: number; readonly all?: number }
  | {
      readonly at: 'stored';
      readonly deed: string;
      readonly added: number;
      readonly copiedTablet: boolean;
      readonly fault?: string;
    }
  | { readonly at: 'taken back' };

/** Open a file, see what would change, take it in whole or not at all, and take it back again. */
export function CarryIn() {
  const desk = useDesk();
  const [state, setState] = useState<State>({ at: 'start' });
  const picker = useRef<HTMLInputElement>(null);

  const open = async (e: ChangeEvent<HTMLInputElement>) => {
    const file = e.target.files?.[0];
    // The same file may be opened again after it was mended.
    e.target.value = '';
    if (!file) return;
    setState({ at: 'reading' });
    const opened = await openSurveyFile(desk, file);
    setState(
      opened.ok ? { at: 'preview', preview: opened.preview } : { at: 'problems', file: file.name, found: opened },
    );
  };
  const accept = async (preview: CarryPreview, otherCollection: boolean) => {
    setState({ at: 'storing' });
    const outcome = await acceptImport(desk, preview, {
      otherCollection,
      progress: (done, all) => setState({ at: 'storing', done, all }),
    });
    if (!outcome.ok) {
      setState({ at: 'preview', preview, fault: sayReason(outcome.reason) });
      return;
    }
    const { deed, added, copiedTablet } = outcome;
    setState({ at: 'stored', deed, added, copiedTablet });
    say(words.accepted(added));
  };
  const takeBack = async (stored: State & { readonly at: 'stored' }) => {
    const outcome = await undoImport(desk, stored.deed);
    if (!outcome.ok) {
      setState({ ...stored, fault: sayReason(outcome.reason) });
      return;
    }
    setState({ at: 'taken back' });
    say(words.undone);
  };
  const leave = () => {
    setState({ at: 'start' });
    say(words.left);
  };

  return (
    <Section title={words.in} lead={words.inWhat}>
      <input
        ref={picker}
        type="file"
        className="unseen"
        tabIndex={-1}
        accept="application/json,.json"
        aria-label={words.open}
        onChange={open}
      />
      {state.at !== 'preview' && state.at !== 'storing' && state.at !== 'reading' && (
        <div className="row">
          <Button kind="main" icon={<FileIcon />} onClick={() => picker.current?.click()}>
            {words.open}
          </Button>
        </div>
      )}
      {state.at === 'reading' && <Progress label={words.readingFile} />}
      {state.at === 'problems' && <ImportProblems file={state.file} found={state.found} />}
      {state.at === 'preview' && (
        <ImportShown
          preview={state.preview}
          fault={state.fault}
          onAccept={(other) => accept(state.preview, other)}
          onLeave={leave}
        />
      )}
      {state.at === 'storing' && (
        <Progress
          label={words.accepting}
          {...(state.all === undefined ? {} : { done: state.done ?? 0, all: state.all })}
        />
      )}
      {state.at === 'stored' && (
        <Notice
          title={words.accepted(state.added)}
          actions={
            <>
              <Button onClick={() => takeBack(state)}>{words.undo}</Button>
              <LinkButton to={pathTo.sculptures()}>{w.shell.nav.sculptures}</LinkButton>
            </>
          }
        >
          {state.copiedTablet && <p>{sayReason({ code: 'copied tablet', params: {} })}</p>}
          {state.fault && <p className="field-error">{state.fault}</p>}
        </Notice>
      )}
      {state.at === 'taken back' && <Notice title={words.undone} />}
    </Section>
  );
}
