import { thingsOf } from '../../actions';
import { cardPhotos, laterPhoto } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { date, lettersOf, w } from '../../words';
import { Button, LinkButton } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import type { OpenFile } from './OfCampaign';
import { Signed } from './Signed';
import { SmallPhoto } from './SmallPhoto';

const words = w.campaign.card;

interface ColourCardsProps {
  readonly file: OpenFile;
  readonly cards: readonly Thing<'colourCard'>[];
  readonly onEdit: (card: Thing<'colourCard'>) => void;
}

/** The colours that were agreed, each with its four photos and what can be held against them. */
export function ColourCards({ file, cards, onEdit }: ColourCardsProps) {
  if (cards.length === 0) return <p className="soft">{words.none}</p>;
  return (
    <>
      <p className="small soft">{words.photosCaution}</p>
      <ul className="bare stack">
        {cards.map((card) => (
          <li key={card.thing}>
            <ColourCard file={file} card={card} onEdit={() => onEdit(card)} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Photos to hold against the card: those alike, else the one there is. */
const laterOnes = (card: Thing<'colourCard'>, photos: readonly Thing<'photo'>[]) => {
  const all = cardPhotos.flatMap((slot) => {
    const own = card.body[slot.field];
    const found = own && laterPhoto(card, slot, photos);
    return own && found ? [{ slot, own, found }] : [];
  });
  const alike = all.filter(({ found }) => found.alike);
  return alike.length > 0 ? alike : all.slice(0, 1);
};

interface ColourCardProps {
  readonly file: OpenFile;
  readonly card: Thing<'colourCard'>;
  readonly onEdit: () => void;
}

function ColourCard({ file, card, onEdit }: ColourCardProps) {
  const { sculpture } = file.campaign.body;
  const { body } = card;
  const photos = useQuestion(thingsOf(useDesk(), 'photo', sculpture)) ?? [];
  const later = laterOnes(card, photos);
  return (
    <article className="card stack">
      <h3>{body.words}</h3>
      <p className="soft">{words.agreedOn(date(body.date), lettersOf(file.record, body.zones))}</p>
      <ul className="bare card-photos">
        {cardPhotos.map(({ field }) => {
          const photo = body[field];
          return (
            <li key={field}>
              {photo ? (
                <SmallPhoto photo={photo} alt={words.photoAlt(words.photos[field])} caption={words.photos[field]} />
              ) : (
                <div className="small-photo no-photo">
                  <span className="soft small">{words.noPhoto}</span>
                  <span className="small">{words.photos[field]}</span>
                </div>
              )}
            </li>
          );
        })}
      </ul>
      <p>{[body.panel && words.panel(body.panel), body.kept && words.kept(body.kept)].filter(Boolean).join(' · ')}</p>
      <Signed signed={body.signed} />
      {body.note && <p className="small">{body.note}</p>}
      <div className="row not-printed">
        <Button kind="quiet" aria-label={words.edit(date(body.date))} onClick={onEdit}>
          {words.change}
        </Button>
        {body.agreedColour && (
          <LinkButton kind="quiet" to={pathTo.colour(sculpture)}>
            {words.instrument}
          </LinkButton>
        )}
        {later.map(({ slot, own, found }) => (
          <LinkButton
            key={slot.field}
            to={pathTo.compare(sculpture, own, found.photo.thing)}
            label={words.compareOne(words.photos[slot.field])}
          >
            {words.compareOne(words.photos[slot.field])}
          </LinkButton>
        ))}
      </div>
      {later.length === 0 && <p className="small soft">{words.noLater}</p>}
      {later.some(({ found }) => !found.alike) && <p className="small soft">{words.notAlike}</p>}
    </article>
  );
}
