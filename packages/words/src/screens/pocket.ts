/** Words of the pocket screen and of the signals a session gives. */
export function pocketWords() {
  return {
    open: 'Into the pocket',
    title: 'Pocket screen',
    hold: 'Hold to come back',
    holdHint: 'A touch does nothing; hold for a moment. By keyboard hold Escape.',
    keysGoOn: 'A paired keyboard or remote goes on recording.',
    awake:
      'The screen stays awake, dark. Locking the phone stops sound, vibration and anything that listens.',
    notAwake:
      'This browser does not keep the screen awake: when the phone locks itself, sound, vibration and anything that listens stop.',
    lockedBreak: 'Locking the phone may silence the end of the break; the clock here goes on all the same.',
  };
}

export type PocketWords = ReturnType<typeof pocketWords>;
