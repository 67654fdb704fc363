import { describe, expect, it } from 'vitest';
import { type InstallAnswer, type InstallPage, listenForInstall, useInstall } from './install-prompt.ts';

/** User agents as the makers document their forms; the figures in them are of no matter. */
const AGENTS = {
  iphone:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1',
  ipadAsMac:
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Safari/605.1.15',
  chromeOnIphone:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) CriOS/137.0.7151.51 Mobile/15E148 Safari/604.1',
  inAnotherApp:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Mobile/15E148',
  chromeOnAndroid:
    'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/137.0.0.0 Mobile Safari/537.36',
} as const;

interface Device {
  readonly agent: keyof typeof AGENTS;
  readonly fingers: number;
  readonly standalone?: boolean;
  readonly ownWindow?: boolean;
}

function opened({ agent, fingers, standalone, ownWindow = false }: Device): InstallPage {
  const navigator = {
    userAgent: AGENTS[agent],
    maxTouchPoints: fingers,
    ...(standalone === undefined ? {} : { standalone }),
  };
  const matchMedia = (query: string) => ({ matches: ownWindow && query === '(display-mode: standalone)' });
  const page = Object.assign(new EventTarget(), { navigator, matchMedia });
  listenForInstall(page);
  return page;
}

function browserOffers(page: EventTarget, outcome: InstallAnswer): { readonly event: Event; asked: number } {
  const seen = { event: new Event('beforeinstallprompt', { cancelable: true }), asked: 0 };
  const prompt = async () => {
    seen.asked += 1;
    return { outcome };
  };
  page.dispatchEvent(Object.assign(seen.event, { prompt }));
  return seen;
}

const offer = () => useInstall.getState().offer;

describe('with no offer of the browser', () => {
  it.each<[string, Device, string]>([
    ['Safari on a phone is told how', { agent: 'iphone', fingers: 5, standalone: false }, 'by-hand'],
    ['a tablet that calls itself a Macintosh too', { agent: 'ipadAsMac', fingers: 5 }, 'by-hand'],
    ['a Macintosh is not', { agent: 'ipadAsMac', fingers: 0 }, 'none'],
    ['opened from the home screen', { agent: 'iphone', fingers: 5, standalone: true }, 'none'],
    ['opened in its own window', { agent: 'iphone', fingers: 5, ownWindow: true }, 'none'],
    ['another browser on a phone', { agent: 'chromeOnIphone', fingers: 5 }, 'none'],
    ['a page inside another app', { agent: 'inAnotherApp', fingers: 5 }, 'none'],
    ['a browser that will offer, and has not', { agent: 'chromeOnAndroid', fingers: 5 }, 'none'],
  ])('%s', (_name, device, wanted) => {
    opened(device);
    expect(offer()).toBe(wanted);
  });
});

describe('with an offer of the browser', () => {
  it('holds the prompt back, shows the offer, and asks once', async () => {
    const seen = browserOffers(opened({ agent: 'chromeOnAndroid', fingers: 5 }), 'accepted');
    expect(seen.event.defaultPrevented).toBe(true);
    expect(offer()).toBe('prompt');
    expect(seen.asked).toBe(0);
    expect(await useInstall.getState().ask()).toBe('accepted');
    expect(seen.asked).toBe(1);
    expect(offer()).toBe('none');
    await useInstall.getState().ask();
    expect(seen.asked).toBe(1);
  });

  it('shows it again when the browser offers it again after a no', async () => {
    const page = opened({ agent: 'chromeOnAndroid', fingers: 5 });
    browserOffers(page, 'dismissed');
    expect(await useInstall.getState().ask()).toBe('dismissed');
    expect(offer()).toBe('none');
    browserOffers(page, 'accepted');
    expect(offer()).toBe('prompt');
  });

  it('is gone once the program is there, whoever put it there', () => {
    const page = opened({ agent: 'chromeOnAndroid', fingers: 5 });
    browserOffers(page, 'accepted');
    page.dispatchEvent(new Event('appinstalled'));
    expect(offer()).toBe('none');
  });
});
