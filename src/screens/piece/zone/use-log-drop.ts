import { useForm } from '../../../parts/fields/form/use-form';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { cautionsDue } from '../../../shop/cautions/cautions-due';
import type { DropFill } from '../../../shop/zone/drop-fill';
import type { Stand } from '../../../shop/zone/stands';
import { metresToUm } from '../../../units';
import { DROP_WORDS as WORDS } from '../../../words/piece/zone';

const MOST_UM = 500;

/** Logs the next drop of a fill; where cautions are still to be read, `wayRound` leads by way of them. */
export function useLogDrop({ piece, zone }: Stand, { done, nextDryM }: DropFill, jarId: string) {
  const { shop, nowMs, actions } = useShop();
  const form = useForm();
  const jar = shop.value.jars.get(jarId);
  const asks = jar !== undefined && cautionsDue(shop.value, jar, 'brush', nowMs.value).length > 0;
  const zoneId = zone?.zoneId ?? '';
  const um = Math.max(0.1, Math.min(MOST_UM, metresToUm(nextDryM))).toFixed(1);
  const wayRound = asks
    ? `${linkTo('lay')}?piece=${piece.id}&zone=${zoneId}&jar=${jarId}&how=brush-fill&dry=${um}`
    : undefined;

  async function log(): Promise<void> {
    const dryFilm = { text: um, unit: 'um' } as const;
    const air = shop.value.airReadings.at(-1)?.id;
    const laid = await form.send(true, () =>
      actions.layCoat({
        piece: piece.id,
        jar: jarId,
        how: 'brush-fill',
        film: { by: 'usual', dryFilm },
        zoneId,
        ...(air && { air }),
      }),
    );
    if (laid) sayLogged(actions, laid.id, WORDS.drop(done + 1), WORDS.laid(done + 1));
  }

  return { form, wayRound, log: () => void log() };
}
