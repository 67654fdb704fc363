export type PlaceName = 'dogs' | 'plan' | 'work' | 'back' | 'setup';

/** Drawn in the hand of the field card: dog and handler, a row of cards, a stop with its cast, a way out and home, a ruler. */
const PATHS: Readonly<Record<PlaceName, string>> = {
  dogs: 'M5.5 9.6a2.9 4.9 0 1 0 .01 0M15.5 3l3 5.6a6 6 0 1 1-6 0z',
  plan: 'M3.5 5h7v14h-7zM13.5 5h7v14h-7zM7 15.5V9M17 15.5v-4l-1.5-2',
  work: 'M15 21V12M9 12h12M15 12C15 6.5 11 5.5 4 6.5M8 3 4 6.5l5 3',
  back: 'M17 21V10a5 5 0 0 0-10 0v9M3 14.5 7 19l4-4.5',
  setup: 'M18 3v18M18 3h-8M18 9h-4.5M18 15h-8M18 21h-4.5',
};

export function PlaceIcon({ place }: { readonly place: PlaceName }) {
  return (
    <svg
      className={`place-icon place-icon-${place}`}
      viewBox="0 0 24 24"
      width="24"
      height="24"
      aria-hidden="true"
    >
      <path d={PATHS[place]} />
    </svg>
  );
}
