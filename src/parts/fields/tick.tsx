import { Icon } from '../blocks/icons';

export interface TickProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly isTicked: boolean;
  readonly onTick: (isTicked: boolean) => void;
}

/** A tile that is on or off. */
export function Tick({ label, hint, isTicked, onTick }: TickProps) {
  return (
    <label class="tile">
      <input
        type="checkbox"
        checked={isTicked}
        onChange={(event) => {
          onTick(event.currentTarget.checked);
        }}
      />
      <Icon name="check" />
      <span>
        {label}
        {hint && <small>{hint}</small>}
      </span>
    </label>
  );
}

/** Several tiles of which any may be on. */
export function Ticks<Value extends string>({
  label,
  options,
  ticked,
  onTicked,
}: {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly label: string; readonly hint?: string }[];
  readonly ticked: readonly Value[];
  readonly onTicked: (ticked: readonly Value[]) => void;
}) {
  return (
    <fieldset class="choice">
      <legend>{label}</legend>
      <div class="tiles">
        {options.map(({ value, ...option }) => (
          <Tick
            key={value}
            {...option}
            isTicked={ticked.includes(value)}
            onTick={(isTicked) =>
              onTicked(isTicked ? [...ticked, value] : ticked.filter((one) => one !== value))
            }
          />
        ))}
      </div>
    </fieldset>
  );
}
