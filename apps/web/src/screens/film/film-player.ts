import type { FilmIndex } from '../../devices/film-reader.ts';

/** What the player shows at a moment; a new object with every change. */
export interface PlayerNow {
  /** Time of the frame that is shown, by the film's own time stamps; `null` before the first is there. */
  readonly shownS: number | null;
  readonly isPlaying: boolean;
  readonly rate: number;
  readonly isMuted: boolean;
  /** How long the browser takes the film to be; `null` before it knows. */
  readonly lengthS: number | null;
  /** Played round and round between these two moments. */
  readonly loop: { readonly fromS: number; readonly toS: number } | null;
  /** Whether the browser shows the film's pictures; not known before it has begun. */
  readonly picture: 'waiting' | 'there' | 'none';
  /** Where the film could not be read on; the browser shows nothing more until it is opened again. */
  readonly brokenAtS: number | null;
}

/** A frame as a mark takes it. */
export interface MarkedFrame {
  readonly atS: number;
  /** The longer of the times to the frame before and the frame after. */
  readonly frameS: number;
}

/** The browser tells the time of a frame in whole microseconds, cut off. */
const ROUNDING_S = 2e-6;
/** Where frames can't be counted: what a frame lasts in most films, until playing tells (our judgement, 2026). */
const USUAL_FRAME_S = 1 / 25;
/** How long a browser may take to hand over the frame it has found, milliseconds. */
const HANDOVER_MS = 250;
/** A film that does not come back from a seek in so long is not read on, milliseconds (our judgement, 2026). */
const SEEK_MS = 10_000;
/** A frame that is stored but never shown is passed over, so many in a row at most. */
const HIDDEN_FRAMES = 3;

const AT_REST: PlayerNow = {
  shownS: null,
  isPlaying: false,
  rate: 1,
  isMuted: false,
  lengthS: null,
  loop: null,
  picture: 'waiting',
  brokenAtS: null,
};

/**
 * Shows a film frame by frame. The film's index says when each frame begins, the browser is sent to its middle, and the browser's own word of which
 * frame it showed is what counts. Without an index a step is about a frame. Knows nothing of screens: they subscribe.
 */
export class FilmPlayer {
  readonly #video: HTMLVideoElement;
  readonly #index: FilmIndex | null;
  readonly #listeners = new Set<() => void>();
  readonly #leave = new AbortController();
  #now: PlayerNow = AT_REST;
  #frameS = USUAL_FRAME_S;
  /** Where the film stood when the browser last showed a frame. */
  #handedAtS = Number.NaN;
  /** Where the film is shown first, once the browser has it. */
  #beginS = 0;
  /** The browser is opening the film again: where it is sent meanwhile, it begins. */
  #isOpening = false;
  #tail: Promise<void> = Promise.resolve();
  #waiting = 0;

  constructor(video: HTMLVideoElement, index: FilmIndex | null) {
    this.#video = video;
    this.#index = index;
    const { signal } = this.#leave;
    const on = (event: string, act: () => void) => video.addEventListener(event, act, { signal });
    const follow = () => this.#change({ isPlaying: !video.paused && !video.ended });
    for (const event of ['play', 'playing', 'pause', 'ended', 'seeked']) on(event, follow);
    const look = () =>
      this.#change({
        picture: video.videoWidth > 0 ? 'there' : 'none',
        lengthS: Number.isFinite(video.duration) ? video.duration : null,
      });
    on('loadeddata', look);
    on('durationchange', () => video.readyState >= video.HAVE_CURRENT_DATA && look());
    on('ended', () => this.setLoop(this.#now.loop));
    on('loadeddata', () => {
      this.#isOpening = false;
      void this.seek(this.#beginS);
    });
    if (video.readyState >= video.HAVE_CURRENT_DATA) {
      look();
      void this.seek(video.currentTime);
    }
    const fail = () => {
      if (this.#now.picture === 'waiting') this.#change({ picture: 'none' });
      else this.#change({ brokenAtS: this.#now.shownS ?? 0, isPlaying: false });
    };
    on('error', fail);
    if (video.error !== null) fail();
    if (!('requestVideoFrameCallback' in video)) on('timeupdate', () => this.#shown(this.#video.currentTime));
    else this.#watchFrames();
  }

  get now(): PlayerNow {
    return this.#now;
  }

  subscribe = (listen: () => void): (() => void) => {
    this.#listeners.add(listen);
    return () => this.#listeners.delete(listen);
  };

  /** Stops listening; the video itself is the screen's. */
  leave(): void {
    this.#leave.abort();
    this.#listeners.clear();
  }

  toggle(): void {
    if (this.#video.paused) void this.#video.play().catch(() => undefined);
    else void this.stop();
  }

  /** Stops on the frame that the film stands at: the browser may show one more after it was told to pause. */
  stop(): Promise<void> {
    const wasPlaying = !this.#video.paused;
    this.#video.pause();
    return wasPlaying ? this.seek(this.#video.currentTime) : this.#tail;
  }

  setRate(rate: number): void {
    this.#video.playbackRate = rate;
    // What a film that is opened again begins with.
    this.#video.defaultPlaybackRate = rate;
    this.#change({ rate });
  }

  setMuted(isMuted: boolean): void {
    this.#video.muted = isMuted;
    this.#change({ isMuted });
  }

  /** Plays round and round between two moments; `null` ends that. */
  setLoop(loop: PlayerNow['loop']): void {
    this.#change({ loop });
    if (loop === null) return;
    void this.seek(loop.fromS).then(() => this.#video.play().catch(() => undefined));
  }

  /** Goes to the frame shown at a moment. */
  seek(atS: number): Promise<void> {
    if (this.#isOpening) {
      this.#beginS = atS;
      return Promise.resolve();
    }
    const { loop } = this.#now;
    if (loop !== null && (atS < loop.fromS || atS > loop.toS)) this.#change({ loop: null });
    return this.#inTurn(() => this.#goTo(atS));
  }

  /** One frame on or back. Steps asked for while one is under way follow in turn; `isHeld` ones, of a key held down, are let fall. */
  step(by: 1 | -1, isHeld = false): Promise<void> {
    if (isHeld && this.#waiting > 0) return Promise.resolve();
    void this.stop();
    return this.#inTurn(() => this.#stepOne(by));
  }

  /** The frame that is shown once every step asked for is made, as a mark takes it; `null` before there is one. */
  async frame(): Promise<MarkedFrame | null> {
    await this.#tail;
    const { shownS } = this.#now;
    if (shownS === null) return null;
    if (this.#index === null) return { atS: shownS, frameS: 2 * this.#frameS };
    const { startS, nextS, beforeS } = await this.#index.frameAt(shownS + ROUNDING_S);
    const lengths = [nextS === null ? 0 : nextS - startS, beforeS === null ? 0 : startS - beforeS];
    return { atS: startS, frameS: Math.max(...lengths) };
  }

  /** Opens the same film again after it broke off, a second before there. */
  goOn(): void {
    this.#beginS = Math.max(0, (this.#now.brokenAtS ?? 0) - 1);
    this.#isOpening = true;
    this.#change({ brokenAtS: null });
    this.#video.load();
  }

  #inTurn(act: () => Promise<void>): Promise<void> {
    this.#waiting += 1;
    const brokeOff = (): void => this.#change({ brokenAtS: this.#now.shownS ?? 0, isPlaying: false });
    this.#tail = this.#tail
      .then(act)
      .catch(brokeOff)
      .finally(() => {
        this.#waiting -= 1;
      });
    return this.#tail;
  }

  async #goTo(atS: number): Promise<void> {
    if (this.#index === null) return this.#show(Math.max(0, atS));
    const { startS, nextS } = await this.#index.frameAt(Math.max(0, atS));
    return this.#showFrame(startS, nextS);
  }

  async #stepOne(by: 1 | -1): Promise<void> {
    const fromS = this.#now.shownS ?? 0;
    if (this.#index === null) return this.#show(Math.max(0, fromS + by * this.#frameS));
    let at = await this.#index.frameAt(fromS + ROUNDING_S);
    for (let n = 0; n < HIDDEN_FRAMES; n++) {
      const nextS = by === 1 ? at.nextS : at.beforeS;
      if (nextS === null) return;
      at = await this.#index.frameAt(nextS);
      await this.#showFrame(at.startS, at.nextS);
      if (Math.abs((this.#now.shownS ?? 0) - fromS) > ROUNDING_S) return;
    }
  }

  /** Sends the browser into the middle of a frame: at its edges rounding could show a neighbour. */
  async #showFrame(startS: number, nextS: number | null): Promise<void> {
    const lastsS = nextS === null ? Math.max(0, (this.#index?.lengthS ?? startS) - startS) : nextS - startS;
    await this.#show(startS + lastsS / 2, startS);
  }

  /** Shows what lies at a moment. Where the browser does not say which frame that was, it is taken to be the one asked for. */
  async #show(atS: number, wantedS = atS): Promise<void> {
    const video = this.#video;
    if (this.#now.brokenAtS !== null) return;
    const found = once(video, ['seeked', 'error'], SEEK_MS);
    video.currentTime = atS;
    const came = await found;
    if (came === 'late') this.#change({ brokenAtS: wantedS, isPlaying: false });
    if (came !== 'seeked') return;
    // The frame itself is handed over a moment after the browser has found it; none comes where it is on the screen already.
    for (let waitedMs = 0; waitedMs < HANDOVER_MS && !this.#isHandedOver(atS); waitedMs += 10) {
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    if (!this.#isHandedOver(atS)) this.#shown(wantedS);
  }

  /** Whether the last frame that the browser showed came after it was sent to that moment. */
  #isHandedOver(atS: number): boolean {
    return Math.abs(this.#handedAtS - atS) < ROUNDING_S;
  }

  #watchFrames(): void {
    const video = this.#video;
    const each = (_now: number, { mediaTime }: VideoFrameCallbackMetadata): void => {
      if (this.#leave.signal.aborted) return;
      const stepS = mediaTime - (this.#now.shownS ?? mediaTime);
      if (this.#now.isPlaying && stepS > 0.001 && stepS < 0.25) this.#frameS = stepS;
      this.#handedAtS = video.currentTime;
      this.#shown(mediaTime);
      video.requestVideoFrameCallback(each);
    };
    video.requestVideoFrameCallback(each);
  }

  #shown(mediaS: number): void {
    this.#change({ shownS: mediaS });
    const { loop, isPlaying } = this.#now;
    if (loop !== null && isPlaying && this.#waiting === 0 && mediaS >= loop.toS) void this.seek(loop.fromS);
  }

  #change(change: Partial<PlayerNow>): void {
    if (this.#leave.signal.aborted) return;
    this.#now = { ...this.#now, ...change };
    for (const listen of this.#listeners) listen();
  }
}

/** The first of some events, or `late`. */
function once(target: EventTarget, events: readonly string[], limitMs: number): Promise<string> {
  return new Promise((resolve) => {
    const leave = new AbortController();
    const timer = setTimeout(() => end('late'), limitMs);
    const end = (how: string): void => {
      leave.abort();
      clearTimeout(timer);
      resolve(how);
    };
    for (const event of events) target.addEventListener(event, () => end(event), { signal: leave.signal });
  });
}
