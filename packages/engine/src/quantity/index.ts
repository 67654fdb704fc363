export { MS_PER_DAY } from './time.ts';
