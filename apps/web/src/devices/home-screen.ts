interface Browser {
  readonly userAgent: string;
  readonly maxTouchPoints: number;
  /** Apple's own flag: opened from the home screen. */
  readonly standalone?: unknown;
}

/** Whether the program was opened from the home screen, in a window of its own. */
export function isOnHomeScreen(browser: Browser, matches: (query: string) => boolean): boolean {
  return browser.standalone === true || matches('(display-mode: standalone)');
}

/** Browsers on iOS that are not Safari say so: each has its own menu, and not all can add to the home screen. */
const NOT_SAFARI = /CriOS|FxiOS|EdgiOS|OPiOS|OPT\/|GSA\/|DuckDuckGo|YaBrowser/;

/**
 * Whether this is Safari on a phone or a tablet of Apple's, which never offers of its own accord: it is added by hand.
 * A tablet that asks for desktop pages calls itself a Macintosh, but is touched with more than one finger.
 */
export function canAddByHand({ userAgent, maxTouchPoints }: Browser): boolean {
  const isApplesTouch =
    /iPhone|iPad|iPod/.test(userAgent) || (/Macintosh/.test(userAgent) && maxTouchPoints > 1);
  return isApplesTouch && /Version\/\S+.* Safari\//.test(userAgent) && !NOT_SAFARI.test(userAgent);
}
