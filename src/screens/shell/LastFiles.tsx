import type { CarriedRow } from '../../actions';
import { date, w, whole } from '../../words';

const words = w.shell;

/** What to open where everything here is gone: name, day and how much was in it. */
export function LastFiles({ files }: { readonly files: readonly CarriedRow[] }) {
  if (files.length === 0) return <p>{words.lastFilesNone}</p>;
  return (
    <>
      <p>{words.lastFiles}</p>
      <ul>
        {files.map((file) => (
          <li key={file.name}>
            <span className="strong file-name">{file.name}</span> <span className="soft">{what(file)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

const what = ({ what: sort, at, entries, photos }: CarriedRow): string =>
  words.lastFile[sort](date(at.slice(0, 10)), whole(entries), whole(photos));
