import { useId } from 'preact/hooks';
import { TIME_FIELD } from '../../../words/common';
import { Icon } from '../../blocks/icons';
import { Choice, Problem } from '../choice';
import { clockText, instantOf, instantsOf, type TimeChoice, type Turn } from './time-choice';

export interface TimeFieldProps {
  readonly label: string;
  readonly value: TimeChoice;
  readonly onChange: (choice: TimeChoice) => void;
  readonly nowMs: number;
  /** The instant chosen, in words: "today 14:20". */
  readonly shown?: string | undefined;
  readonly problem?: string | undefined;
}

const MINUTES_AGO = [0, 5, 20];

/** When it happened: now, a little ago, or by the clock. The phone stays out of the booth, so coats are marked after. */
export function TimeField({ label, value, onChange, nowMs, shown, problem }: TimeFieldProps) {
  const id = useId();
  const isGiven = instantOf(value, nowMs) !== undefined;
  return (
    <div class="field time-field">
      <fieldset class="choice">
        <legend>{label}</legend>
        <div class="tiles">
          {MINUTES_AGO.map((minutes) => (
            <Tile
              key={minutes}
              name={id}
              label={TIME_FIELD.ago(minutes)}
              isChosen={value.kind === 'ago' && value.minutes === minutes}
              onChoose={() => onChange({ kind: 'ago', minutes })}
            />
          ))}
          <Tile
            name={id}
            label={TIME_FIELD.clock}
            isChosen={value.kind === 'clock'}
            onChoose={() => onChange({ kind: 'clock', text: clockText(nowMs) })}
          />
        </div>
      </fieldset>
      {value.kind === 'clock' && (
        <ClockInput {...{ value, onChange, nowMs, problem }} problemId={`${id}-problem`} />
      )}
      {value.kind === 'clock' && <WhichTurn {...{ value, onChange }} isAsked={problem !== undefined} />}
      {shown && <p class="hint digits">{shown}</p>}
      <Problem id={`${id}-problem`} text={isGiven ? problem : problem && TIME_FIELD.notGiven} />
    </div>
  );
}

type ClockInputProps = Pick<TimeFieldProps, 'onChange' | 'nowMs' | 'problem'> & {
  readonly value: { readonly text: string };
  readonly problemId: string;
};

function ClockInput({ value, onChange, nowMs, problem, problemId }: ClockInputProps) {
  return (
    <div class="entry">
      <input
        type="datetime-local"
        aria-label={TIME_FIELD.dayAndTime}
        aria-invalid={problem !== undefined}
        aria-describedby={problemId}
        value={value.text}
        max={clockText(nowMs)}
        onInput={(event) => onChange({ kind: 'clock', text: event.currentTarget.value })}
      />
    </div>
  );
}

const TURNS: readonly Turn[] = ['first', 'second'];

/** Asks which of the two was meant, where the hour came twice. */
function WhichTurn({
  value,
  onChange,
  isAsked,
}: Pick<TimeFieldProps, 'onChange'> & {
  readonly value: Extract<TimeChoice, { kind: 'clock' }>;
  readonly isAsked: boolean;
}) {
  if (instantsOf(value.text).length < 2) return null;
  return (
    <Choice
      label={TIME_FIELD.whichTurn}
      options={TURNS.map((turn) => ({ value: turn, ...TIME_FIELD.turns[turn] }))}
      value={value.turn}
      onChange={(turn) => onChange({ ...value, turn })}
      problem={isAsked && value.turn === undefined ? TIME_FIELD.whichTurn : undefined}
    />
  );
}

interface TileProps {
  readonly name: string;
  readonly label: string;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}

function Tile({ name, label, isChosen, onChoose }: TileProps) {
  return (
    <label class="tile">
      <input type="radio" name={name} checked={isChosen} onChange={onChoose} />
      <Icon name="check" />
      {label}
    </label>
  );
}
