import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { demoWasOpen, openDemo, openDesk } from './actions';
import { applyUpdate, watchUpdates } from './device/offline';
import { App } from './screens/shell/App';
import { tellUpdateReady } from './screens/shell/updateReady';
import { tongueNow } from './words';

const root = document.getElementById('root');
if (root)
  createRoot(root).render(
    <StrictMode>
      <App opening={openDesk()} demoOpening={demoWasOpen() ? openDemo(tongueNow().language) : undefined} />
    </StrictMode>,
  );
void watchUpdates({ onReady: () => tellUpdateReady(applyUpdate) });
