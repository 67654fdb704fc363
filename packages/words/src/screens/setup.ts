import type { Tongue } from '../tongue.ts';

const KIB = 1024;

/** Words of Setup: how it looks, what it says, where the record is kept. */
export function setupWords(t: Tongue) {
  const size = (bytes: number): string => {
    if (bytes < KIB ** 2) return `${t.number(bytes / KIB)} kB`;
    return bytes < KIB ** 3 ? `${t.number(bytes / KIB ** 2, 1)} MB` : `${t.number(bytes / KIB ** 3, 1)} GB`;
  };
  return {
    title: 'Setup',
    theme: {
      title: 'Light',
      sun: 'Sun',
      dusk: 'Dusk',
      system: 'As the device',
      hint: 'Sun is for bright fields, Dusk for the last hour.',
    },
    hand: { title: 'Thumb', left: 'Left', right: 'Right', hint: 'Puts the keys where your thumb is.' },
    dialect: {
      title: 'Words',
      'en-GB': 'British',
      'en-US': 'American',
      hint:
        t.dialect === 'en-US' ? 'British has another word for a bumper.' : 'American calls a dummy a bumper.',
    },
    units: {
      title: 'Lengths',
      metres: t.dialect === 'en-US' ? 'Meters' : 'Metres',
      yards: 'Yards',
      hint: `The record itself always keeps ${t.dialect === 'en-US' ? 'meters' : 'metres'}.`,
    },
    record: {
      title: 'The record',
      counted: (facts: number): string => `${t.count(facts, 'entry', 'entries')} on this device.`,
      export: 'Export the record',
      exportHint: 'One file, JSON Lines, one entry a line: yours to keep, copy or read anywhere.',
      exported: (facts: number, name: string): string =>
        `${t.count(facts, 'entry', 'entries')} written to ${name}.`,
      kept: 'The browser has promised to keep it.',
      notKept:
        'The browser has not promised to keep it, and may clear it when the device is full. Export it now and then.',
      keptUnknown: 'This browser does not say whether it will keep it. Export it now and then.',
      askToKeep: 'Ask the browser to keep it',
      refused: 'The browser said no. Adding the program to the home screen usually helps.',
      used: (bytes: number, roomBytes: number): string => `${size(bytes)} used of ${size(roomBytes)}.`,
      unknown: (n: number): string =>
        `${t.count(n, 'entry', 'entries')} of a newer kind: kept and exported, not shown here.`,
    },
    install: {
      title: 'Keep it on the home screen',
      why: 'It opens with one tap, with no browser round it, and needs no signal.',
      byHand: 'In Safari, tap Share, then Add to Home Screen.',
      ask: 'Put it there',
      hint: {
        prompt: 'The record stays as it is.',
        'by-hand': 'It begins a record of its own there: the one in Safari does not come with it.',
      },
      answered: {
        accepted: 'The browser is putting it there. The record stays as it is.',
        dismissed: 'Not now, then. The browser may offer it again.',
      },
    },
    demo: {
      title: 'The invented kennel',
      in: 'You are looking round an invented kennel. Its record is apart from yours.',
      leave: 'Leave the demo',
      leaveHint: 'Deletes the invented record. Yours is not touched.',
      enter: 'Look round an invented kennel',
    },
    about: {
      title: 'Before you go out',
      lead: 'The program does not know what you can see. The vet, the landowner and local rules always go first.',
      version: (version: string): string => `Sedgeline ${version}. No account, nothing sent anywhere.`,
    },
  };
}

export type SetupWords = ReturnType<typeof setupWords>;
