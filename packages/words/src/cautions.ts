import type { Tongue } from './tongue.ts';

/** Cautions in short. They are reminders, not safe limits: vet, landowner and local rules go first (common practice). */
export interface Caution {
  readonly code: 'heat' | 'joints' | 'whistle' | 'launched' | 'livestock' | 'roads' | 'ask';
  readonly title: string;
  readonly text: string;
}

export function cautionWords(t: Tongue) {
  const texts: Readonly<Record<Caution['code'], Omit<Caution, 'code'>>> = {
    heat: {
      title: 'Heat',
      text: 'A keen dog will not stop by itself. Short, shade and water; heavy panting or a stagger means stop, cool the dog and ring the vet.',
    },
    joints: {
      title: 'Young joints',
      text: 'Under a year: no jumps, no long hard runs, no sharp turns on hard ground. Ask your vet what yours may do.',
    },
    whistle: {
      title: 'Whistle at the ear',
      text: 'Never blow beside a dog or a person. It hurts, and hearing that is lost does not come back.',
    },
    launched: {
      title: `Launched ${t.dummies}`,
      text: `Never at or over a dog or a person; eyes and ears covered; and never pick up a fired ${t.dummy} that has not cooled.`,
    },
    livestock: {
      title: 'Livestock and ground game',
      text: 'Never among stock, and not in nesting time. Ask the landowner, each time.',
    },
    roads: {
      title: 'Roads, wire, water',
      text: 'No line towards a road, rail or wire. Walk the ground and look into the water before the dog goes in.',
    },
    ask: {
      title: 'Ask first',
      text: 'The vet for the dog, the landowner for the ground, local rules for the whistle, the launcher and the lead.',
    },
  };
  const of = (code: Caution['code']): Caution => ({ code, ...texts[code] });
  const order = ['heat', 'joints', 'whistle', 'launched', 'livestock', 'roads', 'ask'] as const;
  return { list: order.map(of) as readonly Caution[], of };
}

export type CautionWords = ReturnType<typeof cautionWords>;
