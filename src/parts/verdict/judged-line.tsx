import type { Verdict } from '../../verdicts/verdict';
import { Icon } from '../blocks/icons';
import { useShop } from '../frame/shop-context';
import { signOf } from './sign';

interface JudgedLineProps {
  readonly verdict: Verdict | undefined;
  /** Whose it is, where several are judged on one page. */
  readonly name?: string | undefined;
}

/** The judge's word on what a form is about to log. A page that offers the act says ready by its button. */
export function JudgedLine({ verdict, name }: JudgedLineProps) {
  const nowMs = useShop().nowMs.value;
  if (!verdict || verdict.word === 'ready') return null;
  const { kind, icon, word } = signOf(verdict, nowMs);
  return (
    <p class="state" data-kind={kind}>
      <Icon name={icon} />
      {name === undefined ? word : `${name}: ${word}`}
    </p>
  );
}
