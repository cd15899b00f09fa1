import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { watchUpdates } from './device/offline';

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <h1>Patina Round</h1>
  </StrictMode>,
);
void watchUpdates({ onReady: () => undefined });
