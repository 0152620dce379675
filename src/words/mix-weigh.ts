// English text of the weigh-up.

const grams = (g: number): string => `${Number(g.toFixed(3))} g`;

export const WEIGH_WORDS = {
  lessThanBefore: (g: number): string =>
    `The scale showed ${grams(g)} before this pour. Write what it shows now, with everything in the cup.`,
} as const;
