import { throwOutFilter } from '../../../actions/air/throw-out-filter';
import type { Filter } from '../../../logbook/fold/shop/shop-air';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Icon, type IconName } from '../../../parts/blocks/icons';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { type FilterState, filterClock, filtersInUse, openDays } from '../../../shop/air/filter-clock';
import { AIR_WORDS } from '../../../words/air/air';
import { FILTER_WORDS as WORDS } from '../../../words/air/room';
import { spanWords } from '../../../words/times';
import { Facts } from '../facts';

const STATE: Record<FilterState, { icon: IconName; kind: 'ready' | 'wait' | 'stop' | 'quiet' }> = {
  fresh: { icon: 'clock', kind: 'quiet' },
  soon: { icon: 'caution', kind: 'wait' },
  due: { icon: 'stop', kind: 'stop' },
  'no-schedule': { icon: 'note', kind: 'quiet' },
};

/** The clock of every cartridge and filter in use. */
export function Filters() {
  const inUse = filtersInUse(useShop().shop.value.filters);
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      {inUse.length === 0 && <EmptyState title={WORDS.none} text={WORDS.noneText} />}
      {inUse.map((filter) => (
        <OneFilter key={filter.id} filter={filter} />
      ))}
      <Notice kind="caution">
        <p>{WORDS.never}</p>
      </Notice>
      <div class="acts">
        <LinkButton kind="main" icon="add" href={linkTo('air', 'filter-form')}>
          {WORDS.open}
        </LinkButton>
        {inUse.length > 0 && <LinkButton href={linkTo('air', 'ended')}>{WORDS.spraying}</LinkButton>}
      </div>
    </Page>
  );
}

function OneFilter({ filter }: { readonly filter: Filter }) {
  const { nowMs, needs, actions } = useShop();
  const form = useForm();
  const clock = filterClock(filter, nowMs.value);
  const { icon, kind } = STATE[clock.state];
  const { wear, open, basis } = filter;

  async function throwOut(): Promise<void> {
    const kept = await form.send(true, () => throwOutFilter(needs, filter.id));
    if (kept) showToast({ text: WORDS.thrownOut(filter.name), onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <Section title={filter.name}>
      <p class="state" data-kind={kind}>
        <Icon name={icon} />
        {WORDS.states[clock.state]}
      </p>
      <Facts
        rows={[
          {
            label: WORDS.parts[filter.part].label,
            value: WORDS.worn(spanWords(clock.wornS * 1000)),
            note: wear && WORDS.of(`${wear.typed.text} h`),
          },
          {
            label: WORDS.parts[filter.part].hint,
            value: WORDS.days(openDays(clock)),
            note: open && WORDS.of(`${open.typed.text} d`),
          },
        ]}
      />
      {basis && <p class="quiet small">{basis}</p>}
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button icon="remove" onClick={() => void throwOut()}>
          {WORDS.throwOut}
        </Button>
      </div>
    </Section>
  );
}
