/** The next larger whole number with as many bits set (Gosper1972). For 1..2^30. */
export function nextWithAsMany(bits: number): number {
  const low = bits & -bits;
  const ripple = bits + low;
  return ripple | (((ripple ^ bits) / low) >> 2);
}
