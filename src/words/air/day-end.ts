/** What the bench asks once the work of a day has rested. */
export const DAY_END_NOTICE = {
  title: 'Before you leave',
  text: 'Rags under water, dust and filters wet and out of the building. They heat by themselves.',
  act: 'End of the day',
} as const;
