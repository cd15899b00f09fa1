import { photoAway, photoUrl } from '../../actions';
import { date, w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { useDesk } from './DeskContext';
import { pathTo } from './paths';
import { useQuestion } from './useQuestion';

/** Of a photo that left this device to make room: in which bag it is, and the way to carry it in. Nothing where it is here. */
export function PhotoAway({ photo }: { readonly photo: string }) {
  const desk = useDesk();
  const url = useQuestion(photoUrl(desk, photo, 'whole'));
  const away = useQuestion(photoAway(desk, photo));
  if (url !== null || !away) return null;
  return (
    <Notice
      title={w.parts.photoAway(away.day && date(away.day), away.name)}
      actions={<LinkButton to={pathTo.carry()}>{w.keeping.carryIn}</LinkButton>}
    />
  );
}
