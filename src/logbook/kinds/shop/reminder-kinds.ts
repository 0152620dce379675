/** Everything a person is reminded of. */
export const REMINDER_KINDS = [
  'next-coat',
  'window-closing',
  'stop-for-today',
  'check-blush',
  'move-piece',
  'next-drop',
  'scuff',
  'rest-day',
  'level-sand',
  'rub-out',
  'sink-check',
  'jar-end',
  'cartridge',
  'rags',
  'customer-update',
  'weigh-card',
  'next-step',
] as const;
export type ReminderKind = (typeof REMINDER_KINDS)[number];

/** Kinds about fire: they cannot be switched off, no quiet hours hold them back, and they stand until acknowledged. */
export const FIRE_KINDS = ['rags'] as const satisfies readonly ReminderKind[];
export type FireKind = (typeof FIRE_KINDS)[number];

/** Kinds that a person may switch off. */
export type SwitchableKind = Exclude<ReminderKind, FireKind>;

/** What is switched; a kind that is not named is on. There is no switch for a fire kind. */
export type Switches = Readonly<Partial<Record<SwitchableKind, boolean>>>;

/** Whether a kind is about fire. */
export const isFireKind = (kind: ReminderKind): kind is FireKind => FIRE_KINDS.some((fire) => fire === kind);

/** Whether a kind reminds; a fire kind always does, whatever is stored. */
export const isOn = (kind: ReminderKind, switches: Switches): boolean =>
  isFireKind(kind) || switches[kind] !== false;
