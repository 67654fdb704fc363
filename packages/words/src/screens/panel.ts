import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Ask, Skill } from '../vocabulary.ts';

/** Names of the fields of an ask, as a handler would say them. */
export const FIELD_NAMES: Readonly<Record<keyof Ask, string>> = {
  distanceM: 'How far out',
  wayFraction: 'Share of the way run',
  temptation: 'What draws',
  handlerPlace: 'Where you stand',
  cover: 'Cover',
  distraction: 'Who is about',
  turnDeg: 'Angle of the hand',
  castM: 'How far the cast carries',
  otherDummies: 'Others lying out',
  gapDeg: 'Gap to the nearest other',
  blind: 'Seen or unseen',
  waitS: 'Wait first',
  obstacle: 'In the way',
  windAcrossMPerS: 'Wind across',
  crew: 'Dogs worked in turn',
};

/** Words of everything on Work that is not a tap of the pad: the fields of an ask, the reps so far, the keys. */
export function panelWords(t: Tongue, trade: TradeWords) {
  return {
    panel: {
      title: 'More',
      close: 'Back to the pad',
      ask: 'What is asked',
      askHint: 'What you set here is asked, and recorded as done.',
      leg: 'Leg',
      all: 'Reps so far',
      none: 'None yet.',
      skills: 'Work on something else',
      otherDogs: 'Another dog’s session',
      note: 'Note on this rep',
      noteSave: 'Keep the note',
      end: 'End the session',
      strike: 'Take this rep out',
      putRight: 'Put something right',
      amendments: (n: number): string => `changed ${t.count(n, 'time', 'times')}`,
      changeLeg: (skill: Skill): string => `Change ${trade.skillInWords(skill).toLowerCase()}`,
      clean: 'Straight through',
      keys: 'Keys: 1 missed, 2 fair, 3 good, space the wide key, 0 undo, 4 to 7 the cause, H harder, E easier, C let run, L blew later, K blew earlier, G got it anyway, B break, W why, N next dog, P pocket, M more. A remote: next page is the wide key, page back undo, Enter missed.',
      device: 'This screen',
      switches: {
        keysOnWork: 'Single keys record',
        tone: 'A soft tone when a break is over',
        vibration: 'A pulse for every tap',
        quiet: 'Quiet: no sound, no vibration',
        keepReward: 'Keep what each rep was paid with',
        turnByItself: 'Among dogs in turn, on to the next by itself',
      },
      easyEnd: 'the easy end',
    },
    field: (field: keyof Ask): string => FIELD_NAMES[field],
    less: (field: keyof Ask, by: string): string => `${FIELD_NAMES[field]}: ${by} less`,
    add: (field: keyof Ask, by: string): string => `${FIELD_NAMES[field]}: ${by} more`,
    fieldUnit: (field: keyof Ask): string => {
      switch (field) {
        case 'distanceM':
        case 'castM':
          return t.units === 'yards' ? 'yd' : 'm';
        case 'wayFraction':
          return '%';
        case 'turnDeg':
        case 'gapDeg':
          return '°';
        case 'waitS':
          return 's';
        case 'windAcrossMPerS':
          return 'm/s';
        default:
          return '';
      }
    },
    seen: { false: 'seen', true: 'unseen' } as const,
  };
}

export type PanelWords = ReturnType<typeof panelWords>;
