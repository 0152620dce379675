import type { Ground } from '../../logbook/fold/pieces';
import type { Typed } from '../../logbook/typed';
import { GROUND_WORDS } from '../../words/piece/ground';
import { typedWords } from './film-as-typed';

/** "Pore filler, tinted: Walnut" */
export const groundName = ({
  ground,
  isTinted = false,
  product,
}: Pick<Ground, 'ground'> & { readonly isTinted?: boolean; readonly product?: string }): string =>
  GROUND_WORDS.name(ground, isTinted, product);

/** How long it waits, by its sheet or as is usual. */
export const groundWait = ({ waits }: { readonly waits?: Typed | { readonly typed: Typed } }): string => {
  if (!waits) return GROUND_WORDS.usual;
  return GROUND_WORDS.waited(typedWords('typed' in waits ? waits.typed : waits));
};
