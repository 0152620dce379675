import { Button, LinkButton } from '../../../parts/blocks/button';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { cautionsDue } from '../../../shop/cautions/cautions-due';
import type { TonerState } from '../../../shop/zone/toner';
import { TONER as WORDS } from '../../../words/piece/coat/toner';
import { usePiece } from '../use-piece';

/** A thin even pass of toner (common practice, no source). */
const PASS = { text: '12', unit: 'um' } as const;

/** Logs a full or a half pass; by way of the cautions where they are still to be read. */
export function TonerPasses({ state: { toner } }: { readonly state: TonerState }) {
  const { shop, nowMs, actions } = useShop();
  const { piece, place } = usePiece();
  const form = useForm();
  const jar = shop.value.jars.get(toner.jar);
  const asks = jar !== undefined && cautionsDue(shop.value, jar, 'spray', nowMs.value).length > 0;
  if (piece.closedMs !== undefined) return null;
  if (asks) {
    const at = place.zoneId ? `&zone=${place.zoneId}` : '';
    const form = `${linkTo('lay')}?piece=${piece.id}&jar=${toner.jar}&how=spray${at}&wet=${PASS.text}&passes=`;
    return (
      <div class="acts">
        <LinkButton kind="main" icon="coat" href={`${form}1`}>
          {WORDS.fullPass}
        </LinkButton>
        <LinkButton icon="coat" href={`${form}0.5`}>
          {WORDS.halfPass}
        </LinkButton>
      </div>
    );
  }

  async function log(passes: number): Promise<void> {
    const film = { by: 'passes', passes, perPass: PASS } as const;
    const air = shop.value.airReadings.at(-1)?.id;
    const said = {
      piece: piece.id,
      jar: toner.jar,
      how: 'spray',
      film,
      ...place,
      ...(air && { air }),
    } as const;
    const kept = await form.send(true, () => actions.layCoat(said));
    if (kept) sayLogged(actions, kept.id, WORDS.passWhat, WORDS.passLogged);
  }

  return (
    <>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button kind="main" icon="coat" onClick={() => void log(1)}>
          {WORDS.fullPass}
        </Button>
        <Button icon="coat" onClick={() => void log(0.5)}>
          {WORDS.halfPass}
        </Button>
      </div>
    </>
  );
}
