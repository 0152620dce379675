import { useSignal } from '@preact/signals';
import { describeZone } from '../../../actions/zone/describe-zone';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import type { Zone } from '../../../logbook/fold/piece/zones';
import { BASES } from '../../../logbook/kinds/piece/piece';
import { ZONE_SORTS } from '../../../logbook/kinds/piece/zone';
import { LIMITS } from '../../../logbook/limits';
import { Page, Section } from '../../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { PIECE_FORM } from '../../../words/piece/piece';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';

type Side = Draft<'mm' | 'cm' | 'in'>;
type Base = Piece['base'] | 'as-piece';

const SORTS = ZONE_SORTS.map((value) => ({ value, ...WORDS.sorts[value] }));
const UNDER = [
  { value: 'as-piece' as const, ...WORDS.asPiece },
  ...BASES.map((value) => ({ value, ...PIECE_FORM.bases[value] })),
];

interface ZoneFormProps {
  readonly piece: Piece;
  /** The one to change; undefined for a new one. */
  readonly zone: Zone | undefined;
}

/** Marks a place on a piece: what it is and how large. */
export function ZoneForm({ piece, zone }: ZoneFormProps) {
  const drafts = useDrafts(zone);
  const { form, save } = useSaving(piece, zone, drafts);
  const { name, sort, length, width, area, depth, overspray, base, note } = drafts;
  const home = zone ? linkTo('piece', piece.id, 'zone', zone.zoneId) : linkTo('piece', piece.id);
  const side = { limit: LIMITS.zoneSide, form, isOptional: true, hint: WORDS.optional } as const;
  return (
    <Page title={zone ? WORDS.changeTitle : WORDS.markTitle} backTo={home} backLabel={WORDS.toPiece}>
      <form class="stack" onSubmit={save} noValidate>
        <Section title={piece.name}>
          <Words
            label={WORDS.name}
            hint={WORDS.nameHint}
            of={name}
            form={form}
            at="name"
            problem={name.value.trim() === '' ? WORDS.nameMissing : undefined}
          />
          <OneOf label={WORDS.is} of={sort} options={SORTS} />
        </Section>
        <Section title={WORDS.size}>
          <div class="pair">
            <Quantity label={WORDS.length} of={length} at="length" {...side} />
            <Quantity label={WORDS.width} of={width} at="width" {...side} />
          </div>
          <Quantity
            label={WORDS.depth}
            hint={WORDS.depthHint}
            of={depth}
            limit={LIMITS.zoneDepth}
            form={form}
            at="depth"
            isOptional
          />
          <Quantity
            label={WORDS.area}
            hint={WORDS.optional}
            of={area}
            limit={LIMITS.zoneArea}
            form={form}
            at="area"
            isOptional
          />
          <Quantity
            label={WORDS.overspray}
            of={overspray}
            at="overspray"
            {...side}
            hint={WORDS.oversprayHint}
          />
        </Section>
        <Section title={WORDS.base}>
          <div class="wide-tiles">
            <OneOf label={WORDS.base} of={base} options={UNDER} />
          </div>
          <Words label={WORDS.note} of={note} form={form} at="note" isLong />
          <Send form={form} icon="check">
            {WORDS.save}
          </Send>
        </Section>
      </form>
    </Page>
  );
}

type Drafts = ReturnType<typeof useDrafts>;

function useDrafts(zone: Zone | undefined) {
  const isUs = useUnits() === 'us';
  const side = (typed: unknown): Side => (typed as Side) ?? { text: '', unit: isUs ? 'in' : 'mm' };
  return {
    name: useSignal(zone?.name ?? ''),
    sort: useSignal<Zone['is']>(zone?.is ?? 'chip'),
    length: useSignal(side(zone?.length?.typed)),
    width: useSignal(side(zone?.width?.typed)),
    overspray: useSignal(side(zone?.overspray?.typed)),
    area: useSignal(
      (zone?.area?.typed as Draft<'mm2' | 'cm2' | 'in2'>) ?? { text: '', unit: isUs ? 'in2' : 'mm2' },
    ),
    depth: useSignal((zone?.depth?.typed as Draft<'mm' | 'in'>) ?? { text: '', unit: isUs ? 'in' : 'mm' }),
    base: useSignal<Base>(zone?.base ?? 'as-piece'),
    note: useSignal(zone?.note ?? ''),
  };
}

function useSaving(piece: Piece, zone: Zone | undefined, drafts: Drafts) {
  const { needs, actions } = useShop();
  const form = useForm();
  const { name, sort, length, width, area, depth, overspray, base, note } = drafts;

  async function save(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    const sides = [length, width, overspray].map((of) => [of, LIMITS.zoneSide, 'optional'] as const);
    const isWhole =
      name.value.trim() !== '' &&
      areWhole(...sides, [area, LIMITS.zoneArea, 'optional'], [depth, LIMITS.zoneDepth, 'optional']);
    const said = {
      piece: piece.id,
      ...(zone && { zoneId: zone.zoneId }),
      name: name.value.trim(),
      is: sort.value,
      ...given('length', length),
      ...given('width', width),
      ...given('area', area),
      ...given('depth', depth),
      ...given('overspray', overspray),
      ...(base.value !== 'as-piece' && { base: base.value }),
      ...(note.value.trim() && { note: note.value.trim() }),
    };
    const kept = await form.send(isWhole, () => describeZone(needs, said));
    if (!kept) return;
    sayLogged(actions, kept.id, WORDS.logged(said.name), WORDS.saved);
    goOn(linkTo('piece', piece.id, 'zone', kept.zoneId));
  }

  return { form, save: (event: Event) => void save(event) };
}
