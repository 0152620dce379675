/** A film that prints or gums is given so many days before it is tried again (common practice, no source). */
export const SOFT_AGAIN_DAYS = 7;
/** Minutes to spray a coat, and to move the piece away; to put a drop into a chip (common practice, no source). */
export const SPRAYING = { minutes: 10, moveMinutes: 5 } as const;
export const DROP_MINUTES = 10;
