import { type ReactNode, useEffect } from 'react';
import { Link, useLocation } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import { PlaceIcon, type PlaceName } from './place-icon.tsx';
import './shell.css';

/** Where each place is. */
const PLACES: readonly { readonly place: PlaceName; readonly href: string }[] = [
  { place: 'dogs', href: '/' },
  { place: 'plan', href: '/plan' },
  { place: 'work', href: '/work' },
  { place: 'back', href: '/back' },
  { place: 'setup', href: '/setup' },
];

export interface ShellProps {
  readonly here: PlaceName;
  /** A line over the screen: the demo, a newer version, a failure. */
  readonly banner?: ReactNode;
  readonly children: ReactNode;
}

/** The frame round every screen: places at the foot on a phone, at the top right on a laptop. */
export function Shell({ here, banner, children }: ShellProps) {
  const { shell } = useWords();
  const [address] = useLocation();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new address is what sends the page to its top.
  useEffect(() => {
    window.scrollTo(0, 0);
  }, [address]);
  return (
    <div className="shell">
      <a className="shell-skip not-printed" href="#main">
        {shell.skip}
      </a>
      <nav className="shell-nav not-printed" aria-label={shell.navigation}>
        <span className="shell-name" aria-hidden="true">
          {shell.name}
        </span>
        <ul>
          {PLACES.map(({ place, href }) => (
            <li key={place}>
              <Link href={href} aria-current={place === here ? 'page' : undefined}>
                <PlaceIcon place={place} />
                <span>{shell.places[place]}</span>
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {banner && <div className="shell-banner not-printed">{banner}</div>}
      <main id="main" className="shell-main" tabIndex={-1}>
        {children}
      </main>
    </div>
  );
}
