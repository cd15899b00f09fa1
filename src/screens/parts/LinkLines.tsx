import { Link } from 'wouter';
import { OnIcon } from './icons';
import './lines.css';

export interface LinkLine {
  readonly to: string;
  readonly name: string;
  /** What lies behind it, in a few words; undefined while it is being read. */
  readonly what: string | undefined;
}

/** A list whose rows lead on, each with a word on what is there. */
export function LinkLines({ rows }: { readonly rows: readonly LinkLine[] }) {
  return (
    <ul className="lines bare">
      {rows.map(({ to, name, what }) => (
        <li key={to}>
          <Link href={to} className="line">
            <span className="grow">
              <span className="strong">{name}</span>
              {/* Its line is there before its words are: what lies below must not move under a hand. */}
              <span className="soft line-detail">{what ?? '\u00a0'}</span>
            </span>
            <OnIcon />
          </Link>
        </li>
      ))}
    </ul>
  );
}
