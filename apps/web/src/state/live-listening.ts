import type { HeardSounds } from '@sedgeline/engine/sound';
import type { RunningMicrophone } from '../devices/microphone.ts';
import type { MicrophoneFault } from '../devices/voice-recorder.ts';
import { listenDesk, newId } from './kennel.ts';
import { useKennel } from './kennel-store.ts';
import { leaveListened } from './listened-drafts.ts';
import { type LiveListening, useLive } from './live-state.ts';
import { voicesOf } from './voices-of.ts';

/** How often what was heard so far is put down, so that a flat battery loses no more (our judgement, 2026). */
const PUT_DOWN_EVERY_S = 5;

/** Begins to listen for a session. One microphone listens at a time. */
export async function startListening(
  session: string,
  keepSound: boolean,
): Promise<'listening' | MicrophoneFault> {
  const { record } = useKennel.getState();
  const [own, { openMicrophone }] = await Promise.all([
    listenDesk().ownWhistle(session),
    import('../devices/microphone.ts'),
  ]);
  const heard: HeardSounds = { whistles: [], clicks: [] };
  let startsAtMs = Date.now();
  let putDownS = 0;
  let microphone: RunningMicrophone | null = null;
  const change = (part: Partial<LiveListening>) =>
    useLive.setState(({ running }) => ({ running: running === null ? null : { ...running, ...part } }));
  const opened = await openMicrophone(own, keepSound, {
    state: (state) => change({ state }),
    news: ({ doneS, isSilent, heard: more }) => {
      if (putDownS === 0) startsAtMs = Date.now() - 1000 * doneS;
      heard.whistles.push(...more.whistles);
      heard.clicks.push(...more.clicks);
      const keptBytes = keepSound ? (microphone?.keptBytes() ?? 0) : null;
      change({ doneS, isSilent, blasts: heard.whistles.length, clicks: heard.clicks.length, keptBytes });
      if (doneS - putDownS < PUT_DOWN_EVERY_S) return;
      putDownS = doneS;
      const draft = { ...heard, lengthS: doneS, startsAtMs, notes: [], sound: null, isNotKept: false };
      leaveListened(record, session, draft);
    },
  });
  if (typeof opened === 'string') return opened;
  microphone = opened;
  let isStopping = false;
  const stop = (): void => {
    if (isStopping) return;
    isStopping = true;
    void end(record, session, opened, keepSound);
  };
  useLive.setState({
    stopped: null,
    running: {
      record,
      session,
      doneS: 0,
      blasts: 0,
      clicks: 0,
      isSilent: false,
      state: 'on',
      keptBytes: keepSound ? 0 : null,
      stop,
    },
  });
  return 'listening';
}

/** What was heard waits to be joined; a sound that was kept lies on the device before anything speaks of it. */
async function end(
  record: LiveListening['record'],
  session: string,
  microphone: RunningMicrophone,
  keepSound: boolean,
): Promise<void> {
  const { listened, startsAtMs, sound } = await microphone.stop();
  const id = newId();
  const kept =
    sound === null
      ? null
      : await voicesOf(record)
          .keep(id, sound, Date.now())
          .catch(() => null);
  if (startsAtMs !== null) {
    const isNotKept = keepSound && kept === null;
    leaveListened(record, session, {
      ...listened,
      startsAtMs,
      sound: kept === null ? null : { id, ...kept },
      isNotKept,
    });
  }
  useLive.setState({ running: null, stopped: session });
}
