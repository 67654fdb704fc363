export { angleApartDeg, RAD_PER_DEG, wholeCircleDeg } from './angle.ts';
export { finiteBetween } from './finite.ts';
export { MS_PER_DAY } from './time.ts';
