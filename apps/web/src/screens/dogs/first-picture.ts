import type { RepPicture } from '@sedgeline/engine/ground';

const SEND = { eastM: 0, northM: 0 };
const MEMORY = { thing: 'memory', kind: 'dummy', eastM: 0, northM: 29 } as const;
const BLIND = { thing: 'asked', kind: 'dummy', eastM: -14, northM: 18 } as const;

/** An invented rep that shows at the first open what a field card is: a line, a stop at 18 m, a cast to the left. */
export const FIRST_PICTURE: RepPicture = {
  layout: { handlerAt: SEND, things: [MEMORY, BLIND], windFromDeg: 250, windMPerS: 3 },
  sendFrom: SEND,
  handlerAt: SEND,
  dogAt: SEND,
  strokes: [
    { kind: 'line', from: SEND, to: { eastM: 0, northM: 18 }, lengthM: 18 },
    { kind: 'unrun', from: { eastM: 0, northM: 18 }, to: MEMORY },
    { kind: 'stop', at: { eastM: 0, northM: 18 }, distanceM: 18 },
    { kind: 'whistle', at: { eastM: 0, northM: 15 }, distanceM: 15 },
    { kind: 'cast', side: 'left', from: { eastM: 0, northM: 18 }, to: BLIND, lengthM: 14 },
  ],
  things: [
    { ...MEMORY, role: 'other', goal: 'memory' },
    { ...BLIND, role: 'asked', goal: 'blind' },
  ],
  cover: 0,
  obstacles: [{ level: 1, on: 'cast', from: { eastM: 0, northM: 18 }, to: BLIND }],
  reachM: 30,
};
