/** Numbers from 0 up to 1 that look drawn by lot, and are the same for the same seed. */
export type Chance = () => number;

/** A seeded source of numbers: an xorshift of 32 bits (G. Marsaglia, "Xorshift RNGs", 2003), started from the text's own characters. */
export function chanceFrom(seed: string): Chance {
  let state = 2463534242;
  for (const character of seed) state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 16777619) >>> 0;
  if (state === 0) state = 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
  for (let warm = 0; warm < 8; warm++) next();
  return next;
}

export const between = (chance: Chance, low: number, high: number): number => low + (high - low) * chance();

/** Near the middle more often than at the ends: from -1 to 1. */
export const around = (chance: Chance): number => (chance() + chance() + chance()) / 1.5 - 1;

/** The whole numbers from 0, as many as asked. */
export const upTo = (count: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor(count)) }, (_, i) => i);
