import { confirmCautions } from '../../actions/air/confirm-cautions';
import type { Jar } from '../../logbook/fold/mix/jars';
import { Button, LinkButton } from '../../parts/blocks/button';
import { CautionRows } from '../../parts/blocks/caution';
import { Section } from '../../parts/blocks/page';
import { Refusal } from '../../parts/fields/form/refusal';
import { useForm } from '../../parts/fields/form/use-form';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { cautionsDue } from '../../shop/cautions/cautions-due';
import { CAUTION_WORDS, ISOCYANATE_CHOICE, WHO_DECIDES } from '../../words/air/cautions';
import type { CoatWay } from './coat-draft';
import { actOf } from './session';

/** The cautions before the first coat of a session. Confirming them logs them, and the coat follows. */
export function BeforeSpraying({ jar, how }: { readonly jar: Jar; readonly how: CoatWay }) {
  const { needs, shop, nowMs } = useShop();
  const form = useForm();
  const act = actOf(how);
  const cautions = cautionsDue(shop.value, jar, act, nowMs.value);
  const hasIsocyanate = cautions.some(({ id }) => id === 'isocyanate');

  const confirm = (): void => {
    void form.send(true, () => confirmCautions(needs, act, cautions));
  };

  return (
    <Section title={CAUTION_WORDS.before[act]}>
      <p>{CAUTION_WORDS.lead}</p>
      <CautionRows cautions={cautions} />
      <p class="quiet">{WHO_DECIDES}</p>
      <Refusal refused={form.refused.value} />
      <div class="acts form-foot">
        {hasIsocyanate && (
          <LinkButton kind="main" icon="stop" isWide href={linkTo('bench')}>
            {ISOCYANATE_CHOICE.stop}
          </LinkButton>
        )}
        <Button kind={hasIsocyanate ? 'danger' : 'main'} icon="check" isWide onClick={confirm}>
          {hasIsocyanate ? ISOCYANATE_CHOICE.goOn : CAUTION_WORDS.done}
        </Button>
      </div>
    </Section>
  );
}
