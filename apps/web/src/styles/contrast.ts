/** Contrast of two sRGB colours, 1 to 21: (L1 + 0.05) / (L2 + 0.05) of their relative luminances (WCAG 2.2, 1.4.3). */
export function contrastRatio(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** Relative luminance of "#rrggbb", 0 to 1 (WCAG 2.2, "relative luminance"). Throws RangeError on another form. */
export function luminance(colour: string): number {
  if (!/^#[0-9a-f]{6}$/i.test(colour)) throw new RangeError(`colour: expected #rrggbb, got ${colour}`);
  const channel = (at: number): number => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}
