import type { WeighUp } from '../../../logbook/fold/mix/weigh-ups';

/** What the scale shows, being typed for a line, and how often that line had been poured when it was. */
export interface Typing {
  readonly line: number;
  readonly text: string;
  readonly pours: number;
}
type Poured = Pick<WeighUp, 'pours'>;

const poursOf = ({ pours }: Poured, line: number): number => pours.filter((one) => one.line === line).length;

/** A text typed for a line as the weigh-up stands. */
export const typed = (weighUp: Poured, line: number, text: string): Typing => ({
  line,
  text,
  pours: poursOf(weighUp, line),
});

/** What was typed, once its line is being poured from here: that pour does not overtake it. */
export const withOwnPour = (typing: Typing): Typing => ({ ...typing, pours: typing.pours + 1 });

/** Whether the line was poured elsewhere while it was being typed for. */
export const isOvertaken = (weighUp: Poured, { line, text, pours }: Typing): boolean =>
  text.trim() !== '' && poursOf(weighUp, line) > pours;

/** What stands in the field of a line: what was typed for it, unless it was overtaken. */
export const textFor = (weighUp: Poured, line: number, typing: Typing | undefined): string =>
  typing?.line === line && !isOvertaken(weighUp, typing) ? typing.text : '';
