import { type ChangeEvent, useEffect, useRef, useState } from 'react';
import { acceptImport, type CarryPreview, openSurveyFile, type SurveyFileOpened, undoImport } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, FileIcon, LinkButton, Notice, Progress, Section } from '../parts';
import { pathTo, say, useDesk } from '../shell';
import { ImportProblems } from './ImportProblems';
import { ImportShown } from './ImportShown';
import { MissingPhotos } from './MissingPhotos';

const words = w.carry;

type NotOpened = Extract<SurveyFileOpened, { readonly ok: false }>;
interface HowFar {
  readonly done: number;
  readonly all: number;
}
type State =
  | { readonly at: 'start' }
  | { readonly at: 'reading'; readonly far?: HowFar }
  | { readonly at: 'problems'; readonly file: string; readonly found: NotOpened }
  | { readonly at: 'preview'; readonly preview: CarryPreview; readonly fault?: string }
  | { readonly at: 'photos'; readonly far?: HowFar }
  | { readonly at: 'storing'; readonly far?: HowFar }
  | {
      readonly at: 'stored';
      readonly deed: string;
      readonly said: string;
      readonly copiedTablet: boolean;
      readonly fault?: string;
    }
  | { readonly at: 'taken back' };

/** Open a file, see what would change, take it in whole or not at all, and take it back again. */
export function CarryIn() {
  const desk = useDesk();
  const [state, setState] = useState<State>({ at: 'start' });
  const picker = useRef<HTMLInputElement>(null);
  const leaving = useRef(new AbortController());
  useEffect(() => () => leaving.current.abort(), []);

  const begun = (): AbortSignal => {
    leaving.current = new AbortController();
    return leaving.current.signal;
  };
  const left = () => {
    setState({ at: 'start' });
    say(words.left);
  };
  const open = async (e: ChangeEvent<HTMLInputElement>) => {
    const file = e.target.files?.[0];
    // The same file may be opened again after it was mended.
    e.target.value = '';
    if (!file) return;
    setState({ at: 'reading' });
    const signal = begun();
    const opened = await openSurveyFile(desk, file, {
      signal,
      heard: ({ done, all }) => setState({ at: 'reading', far: { done, all } }),
    });
    if (signal.aborted) return left();
    setState(
      opened.ok ? { at: 'preview', preview: opened.preview } : { at: 'problems', file: file.name, found: opened },
    );
  };
  const accept = async (preview: CarryPreview, otherCollection: boolean) => {
    setState({ at: preview.photos.length > 0 ? 'photos' : 'storing' });
    const signal = begun();
    const outcome = await acceptImport(desk, preview, {
      otherCollection,
      signal,
      heard: (done, all) => setState(done < all ? { at: 'photos', far: { done, all } } : { at: 'storing' }),
      progress: (done, all) => setState({ at: 'storing', far: { done, all } }),
    });
    if (!outcome.ok) {
      if (signal.aborted) return left();
      setState({ at: 'preview', preview, fault: sayReason(outcome.reason) });
      return;
    }
    const { deed, added, photos, copiedTablet } = outcome;
    const said = words.accepted(added, photos);
    setState({ at: 'stored', deed, said, copiedTablet });
    say(said);
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
  const working = state.at === 'reading' || state.at === 'photos' || state.at === 'storing';

  return (
    <Section title={words.in} lead={words.inWhat}>
      <input
        ref={picker}
        type="file"
        className="unseen"
        tabIndex={-1}
        accept="application/json,application/zip,.json,.zip"
        aria-label={words.open}
        onChange={open}
      />
      {state.at !== 'preview' && !working && (
        <div className="row">
          <Button kind="main" icon={<FileIcon />} onClick={() => picker.current?.click()}>
            {words.open}
          </Button>
        </div>
      )}
      {working && (
        <Progress
          label={labels[state.at]}
          {...state.far}
          // Entries go in all at once: from then on nothing is left off.
          onCancel={state.at === 'storing' ? undefined : () => leaving.current.abort()}
        />
      )}
      {state.at === 'problems' && <ImportProblems file={state.file} found={state.found} />}
      {state.at === 'preview' && (
        <ImportShown
          preview={state.preview}
          fault={state.fault}
          onAccept={(other) => accept(state.preview, other)}
          onLeave={left}
        />
      )}
      {state.at === 'stored' && (
        <Notice
          title={state.said}
          actions={
            <>
              {state.deed !== '' && <Button onClick={() => takeBack(state)}>{words.undo}</Button>}
              <LinkButton to={pathTo.sculptures()}>{w.shell.nav.sculptures}</LinkButton>
            </>
          }
        >
          {state.copiedTablet && <p>{sayReason({ code: 'copied tablet', params: {} })}</p>}
          {state.fault && <p className="field-error">{state.fault}</p>}
        </Notice>
      )}
      {state.at === 'taken back' && <Notice title={words.undone} />}
      {state.at !== 'preview' && !working && <MissingPhotos />}
    </Section>
  );
}

const labels = { reading: words.readingFile, photos: words.acceptingPhotos, storing: words.accepting } as const;
