export * from './next-answer.ts';
export { castSide, chainShape, type LaidLeg } from './picture/chain-shape.ts';
export * from './picture/draw-rep.ts';
export { layOut } from './picture/lay-out.ts';
