import { type OpenPersonCheck, openPersonChecks } from '../../actions';
import { date, w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { CloseCheck } from './CloseCheck';

interface PersonChecksProps {
  /** Titles by sculpture; a check of a work not named here stays out. */
  readonly titles: ReadonlyMap<string, string>;
  /** On the page of the work itself: no way there is needed. */
  readonly here?: boolean;
}

/** What could hurt someone. Above everything, until a named person closes it. */
export function PersonChecks({ titles, here }: PersonChecksProps) {
  const checks = useQuestion(openPersonChecks(useDesk())) ?? [];
  return checks
    .filter(({ body }) => titles.has(body.sculpture))
    .map((check) => (
      <PersonCheck key={check.thing} check={check} title={titles.get(check.body.sculpture) ?? ''} here={here} />
    ));
}

function PersonCheck(props: {
  readonly check: OpenPersonCheck;
  readonly title: string;
  readonly here: boolean | undefined;
}) {
  const { check, title, here } = props;
  const { what, opened, sculpture } = check.body;
  return (
    <Notice
      kind="stop"
      title={w.sculptures.check.titleOf(title)}
      actions={
        <>
          <CloseCheck check={check.thing} />
          {!here && <LinkButton to={pathTo.sculpture(sculpture)}>{title}</LinkButton>}
        </>
      }
    >
      <p className="strong">{what}</p>
      <p>
        {w.sculptures.check.tell} {w.sculptures.check.opened(date(opened))}.
      </p>
    </Notice>
  );
}
