export type PlaceName = 'dogs' | 'work' | 'setup';

/** Drawn in the hand of the field card: the dog's oval, a line with its stop, a ruler. */
const PATHS: Readonly<Record<PlaceName, string>> = {
  dogs: 'M8 4.5a3.6 5.4 0 1 0 .01 0M17.5 8.5a3.2 4.8 0 1 0 .01 0',
  work: 'M12 21V4M5 9.5h14',
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
