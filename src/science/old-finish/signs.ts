/** The colour in which the old finish glows under a UV lamp in the dark. */
export const UV_LOOKS = ['orange', 'greenish-yellow', 'milky', 'dark'] as const;
export type UvLook = (typeof UV_LOOKS)[number];

/** Signs that an old finish shows. */
export const OLD_FINISH_SIGNS = ['polish', 'crazed', 'drying-agents', 'oily-smell'] as const;
export type OldFinishSign = (typeof OLD_FINISH_SIGNS)[number];
