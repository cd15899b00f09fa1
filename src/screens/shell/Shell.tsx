import { type ReactNode, Suspense, useEffect } from 'react';
import { matchRoute, Route, Router, useLocation, useRouter } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { collectionState, type Desk, keepAwake, keepInStep, tourStep } from '../../actions';
import { w } from '../../words';
import { EmptyState, LinkButton, Reading } from '../parts';
import { extra } from '../parts/piece';
import { ArrivalContext, useArrival, useStillComing } from './arrival';
import { rememberPlace } from './cameFrom';
import { DeskContext, useDesk } from './DeskContext';
import { ErrorBoundary } from './ErrorBoundary';
import { Header } from './Header';
import { helpNameOf } from './helpNameOf';
import { LiveRegion } from './LiveRegion';
import { Nav } from './Nav';
import { type RouteRow, routes } from './routes';
import { ShellNotices } from './ShellNotices';
import { useQuestion } from './useQuestion';
import { useTopOfPlace } from './useTopOfPlace';
import './shell.css';
import './header.css';

const DeviceFull = extra(async () => (await import('./LowNotices')).DeviceFull);
const Beside = extra(async () => (await import('./Beside')).Beside);
/** No part of a start at the desk. */
const FieldWork = extra(async () => (await import('./FieldWork')).FieldWork);

/** What surrounds every screen of an open collection. */
export function Shell({ desk }: { readonly desk: Desk }) {
  useEffect(() => keepInStep(desk), [desk]);
  return (
    <DeskContext value={desk}>
      <Router hook={useHashLocation}>
        <Frame />
      </Router>
    </DeskContext>
  );
}

function Frame() {
  const [place] = useLocation();
  const { parser } = useRouter();
  const row = routes.find(({ path }) => matchRoute(parser, path, place)[0]);
  const field = row?.field === true;
  useEffect(() => (field ? keepAwake() : undefined), [field]);
  useEffect(() => rememberPlace(place), [place]);
  useTopOfPlace(place);
  return (
    <div className={field ? 'shell field-work' : 'shell'}>
      <button type="button" className="skip" onClick={skipToContent}>
        {w.shell.skip}
      </button>
      <div className="shell-head">
        <Header field={field} help={row && row.path !== helpPath ? helpNameOf(row) : undefined} />
        {!field && <Tour />}
      </div>
      <Nav />
      {/* From zone to zone the pad knows itself when to show the next. */}
      <Main place={field ? row.path : place}>
        <ShellNotices field={field} />
        <Begun>
          <DeviceFull />
        </Begun>
        {field && (
          <Suspense>
            <FieldWork />
          </Suspense>
        )}
        <ErrorBoundary place={place}>
          <Suspense fallback={<Coming />}>{row ? <Shown key={row.path} row={row} /> : <Lost />}</Suspense>
        </ErrorBoundary>
      </Main>
      <LiveRegion />
      <Begun>
        <Beside />
      </Begun>
    </div>
  );
}

/** What is on the screen comes all at once: nothing moves under a finger while answers are read. */
function Main({ place, children }: { readonly place: string; readonly children: ReactNode }) {
  const { arriving, arrival } = useArrival(place);
  return (
    <ArrivalContext value={arrival}>
      <main id="content" tabIndex={-1} className={arriving ? 'arriving' : undefined}>
        {children}
        {arriving && (
          <div className="still-coming">
            <Reading />
          </div>
        )}
      </main>
    </ArrivalContext>
  );
}

function Coming() {
  useStillComing();
  return <Reading />;
}

/** Of no use before a collection is set up: no part of a first visit. */
function Begun({ children }: { readonly children: ReactNode }) {
  const desk = useDesk();
  const collection = useQuestion(collectionState(desk));
  return collection && (collection.name !== null || desk.store.made > 0) ? <Suspense>{children}</Suspense> : null;
}

const helpPath = '/help/:name?';

const TourStrip = extra(async () => (await import('../tour')).TourStrip);

/** Of the demo only, and only once it is asked for. */
function Tour() {
  const { invented } = useDesk();
  const step = useQuestion(tourStep);
  if (!invented || step === 0) return null;
  return (
    <Suspense>
      <TourStrip />
    </Suspense>
  );
}

function Shown({ row }: { readonly row: RouteRow }) {
  return <Route path={row.path}>{(ids) => row.show(ids)}</Route>;
}

const skipToContent = () => document.getElementById('content')?.focus();

function Lost() {
  return (
    <EmptyState
      page
      title={w.shell.lost}
      actions={
        <LinkButton to="/" kind="main">
          {w.shell.brokenBack}
        </LinkButton>
      }
    >
      <p>{w.shell.lostWhat}</p>
    </EmptyState>
  );
}
