import { useLocation } from 'wouter';
import { plannedAll, sculptureList, setTourStep, tourStep } from '../../actions';
import { w } from '../../words';
import { BackIcon, Button, CrossIcon } from '../parts';
import { say, useDesk, useQuestion } from '../shell';
import { type Garden, steps } from './steps';
import './tour.css';

const words = w.tour;

/** Goes along on the tour: what to look at here, and the way on. Left by one touch; it stands in the head, over no control. */
export function TourStrip() {
  const [here, go] = useLocation();
  const desk = useDesk();
  const at = Math.min(useQuestion(tourStep), steps.length);
  const works = useQuestion(sculptureList(desk));
  const planned = useQuestion(plannedAll(desk));
  const step = steps[at - 1];
  if (!step || !works || !planned) return null;
  const garden: Garden = {
    work: (number) => works.find(({ body }) => body.number === number)?.thing,
    collection: desk.collection,
    campaignOf: (work) => planned.campaign.find(({ body }) => body.sculpture === work)?.thing,
  };
  const show = (n: number) => {
    setTourStep(n);
    const place = steps[n - 1]?.to(garden);
    if (!place) return;
    go(place);
  };
  const leave = () => {
    setTourStep(0);
    say(words.left);
  };
  const place = step.to(garden);
  return (
    <section className="tour not-printed" aria-label={words.label}>
      <p className="tour-words" role="status">
        <span className="tour-at figures">{words.at(`${at}`, `${steps.length}`)}</span> {words.steps[step.key]}
      </p>
      <div className="tour-acts by-hand">
        {place && decodeURIComponent(place) !== decodeURIComponent(here) && (
          <Button onClick={() => show(at)}>{words.goThere}</Button>
        )}
        {at > 1 && <Button aria-label={words.back} icon={<BackIcon />} onClick={() => show(at - 1)} />}
        {at < steps.length ? (
          <Button kind="main" onClick={() => show(at + 1)}>
            {words.next}
          </Button>
        ) : (
          <Button kind="main" onClick={leave}>
            {words.end}
          </Button>
        )}
        <Button kind="quiet" aria-label={words.leave} icon={<CrossIcon />} onClick={leave} />
      </div>
    </section>
  );
}
