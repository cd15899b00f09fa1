import { useId } from 'react';
import { type Light, photoUrl, type ShotList } from '../../actions';
import type { Thing } from '../../engine/record';
import { midSentence, w } from '../../words';
import { FileButton, FileIcon, LinkButton, Notice, PhotoView } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { pathTo, useDesk, useQuestion } from '../shell';
import { SquareMark } from './Squares';
import { dayOfPhoto, nameOfShot, type ShotShown } from './shotText';
import { useShotCamera } from './useShotCamera';

const words = w.stations.shots;

interface ShotRowProps {
  readonly list: ShotList;
  readonly shown: ShotShown;
  readonly light: Light | undefined;
}

/** One shot: where from, how it looked last, whether it is there, and the camera. */
export function ShotRow({ list, shown, light }: ShotRowProps) {
  const { shot, letter, square, title, find, facts, station } = shown;
  const { photos, before } = shot;
  const id = useId();
  const standHere = photos.length === 0 ? station?.body.standHere : undefined;
  const asks = askedOtherwise(list, station, light);
  const name = nameOfShot(shown);
  return (
    <li className="shot" aria-labelledby={id}>
      {square ? <SquareMark which={square} /> : <span className="letter">{letter}</span>}
      <div className="shot-words">
        <h3 id={id} aria-label={name}>
          {title}
        </h3>
        {find && <p>{find}</p>}
        {facts.length > 0 && <p className="soft small">{facts.join(' · ')}</p>}
        {photos.length === 0 && asks.map((text) => <ShotAsks key={text} text={text} />)}
      </div>
      {(standHere || before || photos.length > 0) && (
        <div className="shot-pictures">
          {standHere && <Small photo={standHere} alt={words.standHereAlt(name)} caption={words.standHere} />}
          {before && (
            <Small
              photo={before.thing}
              alt={words.beforeAlt(name, dayOfPhoto(list, before))}
              caption={words.before(dayOfPhoto(list, before))}
            />
          )}
          {photos.slice(-1).map((photo) => (
            <Small key={photo.thing} photo={photo.thing} alt={words.nowAlt(name)} caption={dayOfPhoto(list, photo)} />
          ))}
        </div>
      )}
      <div className="shot-foot">
        <p className="shot-state">
          <Box ticked={photos.length > 0} />
          {photos.length > 0 ? words.ticked(photos.length) : words.missing}
        </p>
        <Camera list={list} shown={shown} name={name} light={light} />
      </div>
    </li>
  );
}

function ShotAsks({ text }: { readonly text: string }) {
  return <p className="shot-asks small">{text}</p>;
}

/** What the station asks for and does not get: two photos in unlike light, or one wet and one dry, do not compare well. */
const askedOtherwise = (list: ShotList, station: Thing<'station'> | undefined, light: Light | undefined): string[] => {
  const asked = station?.body;
  const wet = list.round?.body.wet;
  const said: string[] = [];
  if (list.round?.body.ended) return said;
  if (asked?.light && asked.light !== 'any' && light && light !== asked.light)
    said.push(words.asksLight(midSentence(words.lights[asked.light]), midSentence(words.lights[light])));
  if (asked?.wet && wet && wet !== asked.wet) said.push(words.asksSurface(asked.wet, wet));
  return said;
};

interface SmallProps {
  readonly photo: string;
  readonly alt: string;
  readonly caption: string;
}

function Small({ photo, alt, caption }: SmallProps) {
  return <PhotoView url={useQuestion(photoUrl(useDesk(), photo, 'thumb'))} alt={alt} caption={caption} />;
}

function Box({ ticked }: { readonly ticked: boolean }) {
  return (
    <svg className="shot-box" viewBox="0 0 24 24" aria-hidden="true">
      <rect x="2" y="2" width="20" height="20" rx="2" />
      {ticked && <path d="M6 12.5 10.5 17 18.5 7" />}
    </svg>
  );
}

interface CameraProps extends ShotRowProps {
  readonly name: string;
}

/** The camera while the round is under way; photos of the day once it has ended. */
function Camera({ list, shown: { shot, station }, name, light }: CameraProps) {
  const { expect, keep, busy, wrong } = useShotCamera(list, shot, name, light);
  const ended = list.round?.body.ended !== undefined;
  return (
    <div className="shot-acts stack tight not-printed">
      {wrong && <Notice kind="problem" title={wrong} />}
      {busy ? (
        <p role="status">{w.round.photo.keeping}</p>
      ) : (
        <div className="row by-hand">
          {ended ? (
            <FileButton
              accept="image/*"
              onFile={(file) => void keep(file)}
              icon={<FileIcon />}
              size="round"
              label={w.round.photo.chooseOf(name)}
            >
              {w.round.photo.choose}
            </FileButton>
          ) : (
            <PhotoTake what={name} expect={expect} keep={(file) => void keep(file)} />
          )}
          {station && !ended && (shot.before || shot.photos.length > 0) && (
            <LinkButton
              to={pathTo.viewfinder(list.sculpture.thing, station.thing)}
              size="round"
              kind="quiet"
              label={words.viewfinderOf(name)}
            >
              {words.viewfinder}
            </LinkButton>
          )}
        </div>
      )}
    </div>
  );
}
