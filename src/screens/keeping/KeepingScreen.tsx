import { w } from '../../words';
import { Page } from '../parts';
import { CarriedOut } from './CarriedOut';
import { LookedThrough } from './LookedThrough';
import { MakeRoom } from './MakeRoom';
import { NotKept } from './NotKept';
import { OnThisDevice } from './OnThisDevice';
import './keeping.css';

/** How safely the record lies here, where else it lies, whether it is whole, and making room. */
export function KeepingScreen() {
  return (
    <Page title={w.keeping.title} lead={w.keeping.lead} narrow>
      <OnThisDevice />
      <NotKept />
      <CarriedOut />
      <LookedThrough />
      <MakeRoom />
    </Page>
  );
}
