import { methodsOn } from '../../engine/care';
import type { SculptureRecord, Thing } from '../../engine/record';
import { kindOf, methodOf } from '../../engine/trade';
import { stopWordsStanding } from '../../engine/watch';
import { w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo } from '../shell';

const words = w.careDay;

/** What must not touch this work, before anything else is read. */
export function ForbiddenHere({
  sculpture,
  sheet,
}: {
  readonly sculpture: string;
  readonly sheet?: Thing<'methodSheet'> | undefined;
}) {
  const { forbidden, alsoForbidden, usual } = methodsOn(sheet);
  const names = [...alsoForbidden, ...forbidden.map((id) => methodOf(id)?.name ?? id)];
  return (
    <Notice
      kind="stop"
      title={words.forbidden}
      actions={
        <LinkButton kind="quiet" to={pathTo.methodSheet(sculpture)}>
          {words.methodSheet}
        </LinkButton>
      }
    >
      {names.length === 0 ? (
        <p>{words.methods.none}</p>
      ) : (
        <ul className="care-never">
          {names.map((name) => (
            <li key={name}>{name}</li>
          ))}
        </ul>
      )}
      {usual && <p className="soft">{words.forbiddenUsual}</p>}
    </Notice>
  );
}

/** What could hurt somebody, and zones on which the last look saw what the conservator is asked about first: the air may be right, and they are left alone. */
export function LeftAlone({ record }: { readonly record: SculptureRecord }) {
  const standing = stopWordsStanding(record);
  const zones = record.zones.filter(({ thing }) => standing.some(({ zone }) => zone === thing));
  const dangers = record.personChecks.filter(({ body }) => body.closed === undefined);
  return (
    <>
      {dangers.length > 0 && (
        <Notice kind="stop" title={words.danger}>
          {dangers.map(({ thing, body }) => (
            <p key={thing}>{body.what}</p>
          ))}
        </Notice>
      )}
      {zones.length > 0 && (
        <Notice kind="stop" title={words.leftAlone}>
          <ul>
            {zones.map(({ thing, body }) => {
              const kinds = new Set(standing.filter(({ zone }) => zone === thing).map(({ kind }) => kind));
              const names = [...kinds].map((kind) => kindOf(kind)?.name ?? kind).join(', ');
              return <li key={thing}>{words.leftAloneZone(body.letter, names)}</li>;
            })}
          </ul>
        </Notice>
      )}
    </>
  );
}
