/**
 * The browser's small storage of settings. Where the browser lets no page keep anything it throws at every touch: then nothing is
 * there, and what is put lasts as long as the page.
 */
export const pageStorage = {
  getItem: (name: string): string | null => tolerant(() => localStorage.getItem(name)),
  setItem: (name: string, value: string): void => {
    tolerant(() => localStorage.setItem(name, value));
  },
  removeItem: (name: string): void => {
    tolerant(() => localStorage.removeItem(name));
  },
};

function tolerant<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
