import { useLocation } from 'wouter';
import { setTourStep, tourStep } from '../../actions';
import { w } from '../../words';
import { Button } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

/** The tour is of the demo: in one's own collection there is nothing of it to show. */
export function TourOffer() {
  const [, go] = useLocation();
  const { invented } = useDesk();
  const step = useQuestion(tourStep);
  if (!invented) return null;
  const begin = () => {
    if (step === 0) setTourStep(1);
    go(pathTo.sculptures());
  };
  return (
    <Button kind="main" onClick={begin}>
      {step === 0 ? w.tour.begin : w.tour.goOn}
    </Button>
  );
}
