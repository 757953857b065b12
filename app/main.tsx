import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { keepOfflineCopy } from './effects/offline';
import { startShelf } from './effects/shelf';
import { Shell } from './shell/Shell';
import { app } from './store/app';
import './shell/paper.css';
import './shell/layout.css';
import './shell/bar.css';
import './decisions/decisions.css';
import './facts/facts.css';
import './sheets/sheets.css';

const root = document.getElementById('root');
if (!root) throw new Error('The page has no element with the id "root".');

// What was on the board comes first, so that nobody edits a job that is about to be replaced.
await startShelf(app);
createRoot(root).render(
  <StrictMode>
    <Shell />
  </StrictMode>,
);
void keepOfflineCopy();
