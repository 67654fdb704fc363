import { words } from '@sedgeline/words';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import type { InstallOffer } from '../../devices/install-prompt.ts';
import { InstallPart } from './install-part.tsx';

const { install } = words().setup;
const shown = (offer: InstallOffer) =>
  renderToStaticMarkup(<InstallPart install={{ offer, ask: async () => 'accepted' }} />);

it('shows a key where the browser offers it', () => {
  expect(shown('prompt')).toContain(install.title);
  expect(shown('prompt')).toMatch(new RegExp(`<button[^>]*>${install.ask}</button>`));
});

it('says how where it is done by hand, with no key that does nothing', () => {
  expect(shown('by-hand')).toContain(install.byHand);
  expect(shown('by-hand')).not.toContain('<button');
});

it('shows nothing where there is nothing to offer', () => {
  expect(shown('none')).toBe('');
});
