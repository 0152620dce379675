import { useSignal } from '@preact/signals';
import { ownerFacts } from '../../../actions/plan/owner-facts';
import { Button } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { TextField } from '../../../parts/fields/text-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { reasonWords } from '../../../parts/verdict/reason-words';
import { copy, type HandedOver, handOverText } from '../../../reminders/phone/hand-over';
import { OWNER_DRAFTS, OWNER_KINDS, OWNER_WORDS, type OwnerKind } from '../../../words/plan/owner';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { Faults } from '../faults';
import { LeftOut } from '../left-out';
import { useNames, usePlan, usePlannedPiece } from '../use-plan';

const KINDS = OWNER_KINDS.map((value) => ({ value, label: OWNER_WORDS.kinds[value] }));

/** A message to the owner: drafted from the facts, changed by the person, shared by their own tap. */
export function OwnerPage() {
  const open = useShop();
  const piece = usePlannedPiece();
  const names = useNames();
  const units = useUnits();
  const { plan } = usePlan().planned.value;
  const facts = ownerFacts(open, piece.id, names, (reason) => reasonWords(reason, units, open.nowMs.value));
  const kind = useSignal<OwnerKind>('progress');
  /** Undefined while the draft stands as it was made. */
  const changed = useSignal<string | undefined>(undefined);
  const isTried = useSignal(false);
  const text = changed.value ?? (facts ? OWNER_DRAFTS[kind.value](facts) : '');

  async function give(way: (text: string) => Promise<HandedOver>): Promise<void> {
    isTried.value = true;
    if (text.trim() === '') return;
    showToast({ text: OWNER_WORDS.gave[await way(text)] });
  }

  return (
    <Page
      title={OWNER_WORDS.title}
      backTo={linkTo('plan', piece.id)}
      backLabel={PIECE_PLAN.title(piece.name)}
    >
      {!plan.ok && <Faults faults={plan.failure} />}
      <LeftOut pieceId={piece.id} />
      <Section title={piece.name}>
        <p class="quiet">{OWNER_WORDS.text}</p>
        <Choice
          label={OWNER_WORDS.kind}
          options={KINDS}
          value={kind.value}
          onChange={(value) => {
            kind.value = value;
            changed.value = undefined;
          }}
        />
        <div class="message">
          <TextField
            isLong
            label={OWNER_WORDS.message}
            text={text}
            onText={(typed) => {
              changed.value = typed;
            }}
            problem={isTried.value && text.trim() === '' ? OWNER_WORDS.empty : undefined}
          />
        </div>
        <div class="acts">
          <Button kind="main" icon="share" onClick={() => void give(handOverText)}>
            {OWNER_WORDS.share}
          </Button>
          <Button icon="check" onClick={() => void give(copy)}>
            {OWNER_WORDS.copy}
          </Button>
          {changed.value !== undefined && (
            <Button
              icon="undo"
              onClick={() => {
                changed.value = undefined;
              }}
            >
              {OWNER_WORDS.again}
            </Button>
          )}
        </div>
      </Section>
    </Page>
  );
}
