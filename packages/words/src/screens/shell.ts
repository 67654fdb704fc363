/** Words of the frame round every screen. */
export function shellWords() {
  return {
    name: 'Sedgeline',
    places: { dogs: 'Dogs', plan: 'Plan', work: 'Work', back: 'Look back', setup: 'Setup' },
    navigation: 'Places',
    skip: 'To the main part',
    demoBanner: 'An invented kennel: nothing here is real.',
    leaveDemo: 'Leave the demo',
    newVersion: 'A newer version is ready.',
    takeNewVersion: 'Take it now',
    later: 'Later',
    opening: 'Opening the record',
    offlineReady: 'Works with no signal from now on.',
    close: 'Close',
    notFound: 'There is nothing at this address.',
    toDogs: 'To the dogs',
  };
}

export type ShellWords = ReturnType<typeof shellWords>;
