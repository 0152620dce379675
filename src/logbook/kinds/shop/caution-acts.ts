import type { CautionId } from '../../../words/air/cautions';

// Apart from the cautions themselves, so that the logbook can be opened without their text.

/** A moment at which cautions stand. */
export const CAUTION_ACTS = ['spray', 'brush', 'mix', 'sand', 'end-day'] as const;
export type CautionAct = (typeof CAUTION_ACTS)[number];

/** The cautions that a person may choose not to see again. Nothing that burns, poisons or cannot be undone is among them. */
export const SILENCEABLE = ['dust', 'skin'] as const satisfies readonly CautionId[];

/** Whether a person may choose not to see this one again. */
export const mayBeSilenced = (id: string): boolean => SILENCEABLE.some((one) => one === id);
