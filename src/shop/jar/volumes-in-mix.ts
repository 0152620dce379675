import { assertWithin } from '../../science/assert-within';

/** Something added to lacquer, said as a share of the lacquer or of the finished mix. */
export interface AddedPart {
  readonly of: 'lacquer' | 'mix';
  readonly percent: { readonly si: number };
}

/** The least lacquer that makes a mix (judgement, no source). */
const LEAST_LACQUER = 0.01;

/**
 * Lacquer, thinner and retarder as fractions of the volume of the mix.
 *
 * A share of the mix is of the finished mix, thinner and retarder in it; with l lacquer, (1 + what is said of the lacquer) l fills
 * what the shares of the mix leave. Left out: the small change of volume on mixing.
 */
export function volumesInMix(jar: { readonly thinning: AddedPart; readonly retarder?: AddedPart }): {
  readonly lacquer: number;
  readonly thinner: number;
  readonly retarder: number;
} {
  const lacquer = lacquerInMix(jar.retarder ? [jar.thinning, jar.retarder] : [jar.thinning]);
  assertWithin('Lacquer', lacquer, LEAST_LACQUER, 1, 'of the mix');
  const volumeOf = ({ of, percent }: AddedPart) => percent.si * (of === 'mix' ? 1 : lacquer);
  return {
    lacquer,
    thinner: volumeOf(jar.thinning),
    retarder: jar.retarder ? volumeOf(jar.retarder) : 0,
  };
}

/** Whether thinner and retarder together leave no room for lacquer; not said of what is no number. */
export const leavesNoLacquer = (added: readonly AddedPart[]): boolean => lacquerInMix(added) < LEAST_LACQUER;

function lacquerInMix(added: readonly AddedPart[]): number {
  const sumOf = (of: AddedPart['of']) =>
    added.reduce((sum, one) => sum + (one.of === of ? one.percent.si : 0), 0);
  return (1 - sumOf('mix')) / (1 + sumOf('lacquer'));
}
