/** A number as it is typed, with a point or a comma; `null` for anything else. */
export function typedNumber(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  return /^[-+]?\d+(\.\d*)?$|^[-+]?\.\d+$/.test(plain) ? Number(plain) : null;
}
