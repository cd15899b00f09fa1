import { methodsOn } from '../../engine/care';
import type { Thing } from '../../engine/record';
import { methodOf } from '../../engine/trade';
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
