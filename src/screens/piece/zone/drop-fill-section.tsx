import { useSignal } from '@preact/signals';
import { planDrops } from '../../../actions/zone/plan-drops';
import { finishTraits } from '../../../estimator/finishes/traits';
import type { Zone } from '../../../logbook/fold/piece/zones';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { named, SelectField } from '../../../parts/fields/select-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { jarAmount } from '../../../shop/jar/amount';
import {
  DROP_GAP_MS,
  DROPS_A_DAY,
  type DropFill,
  dropFillOf,
  dropsOf,
  SMALLEST_POUR_M3,
} from '../../../shop/zone/drop-fill';
import type { Stand } from '../../../shop/zone/stands';
import { DROP_WORDS as WORDS } from '../../../words/piece/zone';
import { percentWords } from '../../../words/quantities';
import { whenWords } from '../../../words/times';
import { tinyVolumeWords, volumeWords } from '../../../words/volumes';
import { DropDates } from './drop-dates';
import { useLogDrop } from './use-log-drop';

interface DropFillProps {
  readonly stand: Stand;
  readonly zone: Zone;
}

/** How many drops fill this place, the next of them in one tap, and when it may be levelled. */
export function DropFillSection({ stand, zone }: DropFillProps) {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].filter(
    ({ emptiedMs, product, pigment }) =>
      emptiedMs === undefined && !pigment && finishTraits(product.finish).meltsIn,
  );
  const last = dropsOf(stand).at(-1)?.jar;
  const jarId = useSignal(jars.find(({ id }) => id === last)?.id ?? jars.at(-1)?.id);
  const jar = jars.find(({ id }) => id === jarId.value);
  const solids = jar && jarAmount(jar, shop.value).volumeSolids;
  const fill = solids === undefined ? undefined : dropFillOf(stand, solids);
  return (
    <Section title={WORDS.title}>
      {jars.length === 0 ? (
        <p>{WORDS.noJar}</p>
      ) : (
        <SelectField
          label={WORDS.jar}
          options={named(jars)}
          value={jarId.value}
          onChange={(id) => {
            jarId.value = id;
          }}
          hint={solids === undefined ? undefined : WORDS.solids(percentWords(solids, 1))}
        />
      )}
      {jars.length > 0 && !fill && (
        <>
          <p>{WORDS.noSize}</p>
          <div class="acts">
            <LinkButton icon="edit" href={linkTo('piece', zone.piece, 'zone', zone.zoneId, 'change')}>
              {WORDS.addSize}
            </LinkButton>
          </div>
        </>
      )}
      {fill && jar && <Fill stand={stand} fill={fill} jarId={jar.id} />}
      <DropDates stand={stand} fill={fill} />
    </Section>
  );
}

interface FillProps {
  readonly stand: Stand;
  readonly fill: DropFill;
  readonly jarId: string;
}

function Fill({ stand, fill, jarId }: FillProps) {
  const { drops, voidM3, wetM3, done } = fill;
  const units = useUnits();
  return (
    <>
      <p class="outcome-figure digits">{WORDS.range(drops.few, drops.many)}</p>
      <p>{WORDS.rangeText(drops.few, drops.usual, drops.many)}</p>
      <p class="digits">
        {WORDS.void(tinyVolumeWords(voidM3, units))}{' '}
        {wetM3 <= SMALLEST_POUR_M3 / 2
          ? WORDS.smallest(volumeWords(SMALLEST_POUR_M3, units))
          : WORDS.pool(volumeWords(Math.ceil(wetM3 * 1.2e6) * 1e-6, units))}
      </p>
      <p class="quiet">{WORDS.rhythm}</p>
      {done > 0 && <SoFar stand={stand} done={done} />}
      {done >= drops.many && <p>{WORDS.enough}</p>}
      <NextDrop stand={stand} fill={fill} jarId={jarId} />
      <IntoPlan stand={stand} fill={fill} />
    </>
  );
}

function SoFar({ stand, done }: { readonly stand: Stand; readonly done: number }) {
  const nowMs = useShop().nowMs.value;
  const lastMs = dropsOf(stand).at(-1)?.atMs ?? 0;
  return (
    <p class="digits">
      {WORDS.done(done)} {WORDS.lastAt(whenWords(lastMs, nowMs))}{' '}
      {nowMs - lastMs < DROP_GAP_MS && WORDS.tooSoon(whenWords(lastMs + DROP_GAP_MS, nowMs))}
    </p>
  );
}

/** One tap, where the cautions of this session are read; else by way of them. */
function NextDrop({ stand, fill, jarId }: FillProps) {
  const { form, log, wayRound } = useLogDrop(stand, fill, jarId);
  const { few, many } = fill.drops;
  const number = fill.done + 1;
  const words = number <= many ? WORDS.next(number, few, many) : WORDS.extra(number);
  return (
    <>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        {wayRound ? (
          <LinkButton kind="main" icon="coat" isWide href={wayRound}>
            {words}
          </LinkButton>
        ) : (
          <Button kind="main" icon="coat" isWide onClick={log}>
            {words}
          </Button>
        )}
      </div>
    </>
  );
}

function IntoPlan({ stand: { piece }, fill: { drops, done } }: Pick<FillProps, 'stand' | 'fill'>) {
  const { needs, actions } = useShop();
  const form = useForm();
  const left = drops.usual - done;
  if (left <= 0) return null;

  async function plan(): Promise<void> {
    const kept = await form.send(true, () =>
      planDrops(needs, piece.id, { drops: left, aDay: DROPS_A_DAY.many }),
    );
    if (kept) sayLogged(actions, kept.id, WORDS.plannedWhat, WORDS.planned);
  }

  return (
    <>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button icon="plan" onClick={() => void plan()}>
          {WORDS.plan}
        </Button>
      </div>
    </>
  );
}
