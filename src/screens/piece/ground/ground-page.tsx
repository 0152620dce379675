import { useSignal } from '@preact/signals';
import { layGround } from '../../../actions/coat';
import type { Ground } from '../../../logbook/fold/piece/pieces';
import { GROUNDS } from '../../../logbook/kinds/piece/ground';
import { LIMITS } from '../../../logbook/limits';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Tick } from '../../../parts/fields/tick';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { groundsOn } from '../../../shop/stack/grounds';
import { GROUND_WORDS as WORDS } from '../../../words/piece/ground';
import { whenWords } from '../../../words/times';
import { usePiece } from '../use-piece';
import { groundName } from './ground-words';

const SORTS = GROUNDS.map((value) => ({
  value,
  label: WORDS.sorts[value].label,
  hint: WORDS.sorts[value].hint,
}));

/** Logs filler, filler paste, grain sealer or glue, with the wait of its own sheet or the usual one. */
export function GroundPage() {
  const { piece, zone, home } = usePiece();
  const { form, time, sort, product, isTinted, waits, log } = useGround();
  const chosen = sort.value;
  const isFiller = chosen === 'pore-filler' || chosen === 'filler-paste';
  const caution = chosen && WORDS.cautions[chosen];
  return (
    <Page title={WORDS.title} backTo={home}>
      <Section title={zone?.name ?? piece.name}>
        <form class="stack wide-tiles" onSubmit={log} noValidate>
          <OneOf
            label={WORDS.sort}
            options={SORTS}
            of={sort}
            problem={form.isTried.value && !chosen ? WORDS.choose : undefined}
          />
          {caution && (
            <Notice kind="fire">
              <p>{caution}</p>
            </Notice>
          )}
          {isFiller && (
            <Tick
              {...WORDS.tinted}
              isTicked={isTinted.value}
              onTick={(is) => {
                isTinted.value = is;
              }}
            />
          )}
          <Words label={WORDS.product} hint={WORDS.productHint} of={product} form={form} at="product" />
          <Quantity
            label={WORDS.waits}
            hint={chosen && WORDS.waitsHint(chosen)}
            of={waits}
            limit={LIMITS.sheetTime}
            form={form}
            at="waits"
            isOptional
          />
          <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
          <Send form={form} icon="check">
            {WORDS.log}
          </Send>
        </form>
      </Section>
    </Page>
  );
}

/** The wait that was said of the application before. */
const asDraft = (before: Ground | undefined): Draft<'min' | 'h' | 'd'> =>
  (before?.waits?.typed as Draft<'min' | 'h' | 'd'> | undefined) ?? { text: '', unit: 'h' };

/** The form, filled in as the application before it was. */
function useGround() {
  const { needs, actions, shop, nowMs } = useShop();
  const { piece, place, home } = usePiece();
  const before = piece.grounds.at(-1);
  const form = useForm();
  const time = useTime();
  const sort = useSignal<Ground['ground'] | undefined>(before?.ground);
  const product = useSignal(before?.product ?? '');
  const isTinted = useSignal(before?.isTinted === true);
  const waits = useSignal<Draft<'min' | 'h' | 'd'>>(asDraft(before));

  async function log(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    const ground = sort.value;
    const isWhole = ground !== undefined && areWhole([waits, LIMITS.sheetTime, 'optional']);
    const named = product.value.trim();
    const said = {
      piece: piece.id,
      ...place,
      ground: ground ?? 'pore-filler',
      ...(named && { product: named }),
      ...(isTinted.value &&
        (ground === 'pore-filler' || ground === 'filler-paste') && { isTinted: true as const }),
      ...given('waits', waits),
    };
    const logged = await form.send(isWhole, () => layGround(needs, said, time.instantMs() ?? Number.NaN));
    if (!logged) return;
    const on = shop.value.pieces.get(piece.id);
    const last = on && groundsOn(on, shop.value).find(({ id }) => id === logged.id);
    const what = groundName(said);
    sayLogged(
      actions,
      logged.id,
      what,
      WORDS.logged(what, whenWords(last?.until.likelyMs ?? nowMs.value, nowMs.value)),
    );
    goOn(home);
  }

  return { form, time, sort, product, isTinted, waits, log: (event: Event) => void log(event) };
}
