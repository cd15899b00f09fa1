import { eyesOf } from '../../actions';
import { w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.eyeCheck;

/** Until the person who looked has made an eye check: an invitation to one, after the walk and not before it. */
export function EyeInvite({ surveyor }: { readonly surveyor: string }) {
  const known = useQuestion(eyesOf(useDesk()));
  if (!known || surveyor === '' || known.checks.some(({ body }) => body.surveyor === surveyor)) return null;
  const pairs = known.eyes[surveyor]?.pairs ?? 0;
  return (
    <Notice
      title={words.inviteTitle}
      actions={
        <LinkButton to={pathTo.eyeCheck()} size="round">
          {words.invite}
        </LinkButton>
      }
    >
      <p>
        {words.inviteWhat}
        {pairs > 0 && <> {words.pairsSoFar(pairs)}</>}
      </p>
    </Notice>
  );
}
