import type { Ground } from '../../../logbook/fold/piece/pieces';
import type { Typed } from '../../../logbook/typed';
import { typedWords } from '../../../parts/fields/typed-words';
import { GROUND_WORDS } from '../../../words/piece/ground';

/** "Pore filler, tinted: Walnut" */
export const groundName = ({
  ground,
  isTinted = false,
  product,
}: Pick<Ground, 'ground'> & { readonly isTinted?: boolean; readonly product?: string }): string =>
  GROUND_WORDS.name(ground, isTinted, product);

/** How long it waits, by its sheet or as is usual; hours are the same in both systems. */
export const groundWait = ({ waits }: { readonly waits?: Typed | { readonly typed: Typed } }): string => {
  if (!waits) return GROUND_WORDS.usual;
  return GROUND_WORDS.waited(typedWords('typed' in waits ? waits.typed : waits, 'metric'));
};
