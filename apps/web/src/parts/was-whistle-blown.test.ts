import { expect, it } from 'vitest';
import { wasWhistleBlown } from './was-whistle-blown.ts';

const chain = [{ skill: 'line' }, { skill: 'stop' }, { skill: 'cast-left' }] as const;
const line = (grade: 'good' | 'fair' | 'missed') => ({ skill: 'line', grade }) as const;
const stop = (grade: 'good' | 'missed') => ({ skill: 'stop', grade }) as const;

it.each([
  ['a stop still to come after a line that went', [line('good')], true],
  ['or that drifted', [line('fair')], true],
  ['a line that was missed: nobody blew', [line('missed')], false],
  ['a wrong line that was stopped all the same', [line('missed'), stop('good')], true],
  ['a dog that ran on was whistled at', [line('good'), stop('missed')], true],
] as const)('%s', (_, graded, blown) => {
  expect(wasWhistleBlown(graded, chain)).toBe(blown);
});

it('needs a stop in the chain', () => {
  expect(wasWhistleBlown([line('good')], [chain[0]])).toBe(false);
});
