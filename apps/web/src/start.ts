import './styles/styles.css';
import { startWorker } from './state/kennel-port.ts';

/**
 * The page's first act: the worker reads the record while the screens' own code is still on its way. The screens come in a part of
 * their own, so that no one task of the page is as long as both.
 */
startWorker();
void import('./main.tsx');
