/** A sentence in which no figure is parted from its unit by the end of a line. */
export const unbroken = (text: string): string => text.replace(/(\d) (m|yd|s|min|h)\b/g, '$1\u00a0$2');
